"""Networks with more vertices, and with segments split at them."""

from __future__ import annotations

from dataclasses import replace
from typing import Tuple

import numpy as np

from .network import Network


def with_vertices(network: Network, x: np.ndarray, y: np.ndarray, z: np.ndarray) -> Tuple[Network, np.ndarray]:
    """Add vertices at grid places ``x, y`` (q,); a place that has one keeps it (and its height, if any).

    Returns the network and the vertex of each place. Several heights at a new place: the first counts.
    """
    if len(x) == 0:
        return network, np.empty(0, np.int64)
    key = np.concatenate([(network.x << 31) | network.y, (x << 31) | y])
    _, first, inverse = np.unique(key, return_index=True, return_inverse=True)
    new = np.sort(first[first >= len(network.x)])
    place = np.arange(len(key))
    place[new] = len(network.x) + np.arange(len(new))
    vertex = place[first][inverse.ravel()[len(network.x) :]]
    new -= len(network.x)
    added = replace(
        network,
        x=np.concatenate([network.x, x[new]]),
        y=np.concatenate([network.y, y[new]]),
        z=np.concatenate([network.z, z[new]]),
        source=np.concatenate([network.source, np.full(len(new), -1, np.int64)]),
    )
    bare = np.isnan(added.z[vertex])
    added.z[vertex[bare][::-1]] = z[bare][::-1]  # `added.z` is a new array: nothing given is changed
    return added, vertex


def with_splits(network: Network, segment: np.ndarray, along: np.ndarray, vertex: np.ndarray) -> Network:
    """Split ``segment`` numbers at ``vertex``, ordered by ``along`` (0..1); shapes (q,)."""
    touched = np.unique(segment)
    number = np.concatenate([segment, touched, touched])
    position = np.concatenate([along, np.full(len(touched), -1.0), np.full(len(touched), 2.0)])
    node = np.concatenate([vertex, network.segments[touched, 0], network.segments[touched, 1]])
    order = np.lexsort((position, number))
    number, node = number[order], node[order]
    step = (number[:-1] == number[1:]) & (node[:-1] != node[1:])
    pieces, of = np.column_stack([node[:-1], node[1:]])[step], number[:-1][step]
    keep = np.ones(len(network.segments), bool)
    keep[touched] = False
    columns = {
        name: np.concatenate([getattr(network, name)[keep], getattr(network, name)[of]])
        for name in ("kind", "line", "soft")
    }
    segments = np.concatenate([network.segments[keep], pieces])
    return replace(network, segments=segments, touches=None, **columns)
