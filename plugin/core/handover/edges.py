"""Marked edges of a surface as lines, and lines as marked edges."""

from __future__ import annotations

from typing import Dict, List, Sequence, Set, Tuple

import numpy as np

from ..linework.constraints import ConstraintLine, LineKind, make_line
from ..surface.dissolve import dissolve
from ..surface.tin import GRID, Tin


def constrained_edges(tin: Tin) -> Tuple[np.ndarray, np.ndarray]:
    """Every edge with a kind once: vertex numbers (k, 2), smaller first, and their kinds (k,) uint8."""
    triangle, side = np.nonzero(tin.edge_kind)
    ends = np.stack([tin.triangles[triangle, side], tin.triangles[triangle, (side + 1) % 3]], axis=1)
    ends = np.sort(ends.astype(np.int64), axis=1)
    _, first = np.unique(ends[:, 0] * len(tin.vertices) + ends[:, 1], return_index=True)
    return ends[first], tin.edge_kind[triangle, side][first]


def mark_edges(triangles: np.ndarray, count: int, ends: np.ndarray, kinds: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Edge kinds (m, 3) uint8 of ``triangles`` over ``count`` vertices, set where an edge is one of ``ends`` (k, 2).

    Several kinds of one edge add up. Also the mask (k,) of the ends that are edges.
    """
    edge_kind = np.zeros(triangles.shape, np.uint8)
    if len(ends) == 0:
        return edge_kind, np.zeros(0, bool)
    sides = np.sort(np.stack([triangles, np.roll(triangles, -1, axis=1)], axis=2).astype(np.int64), axis=2)
    pairs = np.sort(np.asarray(ends, np.int64), axis=1)
    side_key, key = sides[..., 0] * count + sides[..., 1], pairs[:, 0] * count + pairs[:, 1]
    distinct, place = np.unique(key, return_inverse=True)
    together = np.zeros(len(distinct), np.uint8)
    np.bitwise_or.at(together, place, np.asarray(kinds, np.uint8))
    at = np.minimum(np.searchsorted(distinct, side_key), len(distinct) - 1)
    hit = distinct[at] == side_key
    edge_kind[hit] = together[at[hit]]
    found = np.zeros(len(distinct), bool)
    found[at[hit]] = True
    return edge_kind, found[place]


def marked_lines(tin: Tin, named: Sequence[ConstraintLine] = ()) -> Tuple[ConstraintLine, ...]:
    """The marked edges of ``tin`` joined into lines by kind, in the CRS, metres.

    Lines end where three or more edges of the kind meet; boundaries and voids are whole rings where their edges are.
    Edges of the breaklines ``named`` come last, as lines with their labels.
    """
    edges, kinds = constrained_edges(tin)
    place = tin.vertices + np.append(tin.origin, 0.0)
    lines, own = [], _named_lines(tin, edges[(kinds & int(LineKind.BREAKLINE)) != 0], named)
    if own:
        taken = np.concatenate([np.sort(np.column_stack([chain[:-1], chain[1:]]), axis=1) for chain, _ in own])
        held = np.isin(edges[:, 0] << 32 | edges[:, 1], taken[:, 0] << 32 | taken[:, 1])
        kinds = np.where(held, kinds & np.uint8(255 - LineKind.BREAKLINE), kinds)
    for kind in (LineKind.BREAKLINE, LineKind.BOUNDARY, LineKind.VOID):
        for chain in chain_edges(edges[(kinds & int(kind)) != 0]):
            closed = len(chain) > 3 and chain[0] == chain[-1]
            # A part of a ring, where a boundary left the surface, is no ring.
            as_kind = kind if closed or kind == LineKind.BREAKLINE else LineKind.BREAKLINE
            lines.append(make_line(as_kind, place[np.array(chain)]))
    return (*lines, *(make_line(LineKind.BREAKLINE, place[chain], label) for chain, label in own))


def _named_lines(tin: Tin, edges: np.ndarray, named: Sequence[ConstraintLine]) -> List[Tuple[np.ndarray, str]]:
    """Chains of vertex numbers along the ``named`` lines as far as their segments are among ``edges``, and labels."""
    if not named:
        return []
    keys = tin.grid[:, 0] << 31 | tin.grid[:, 1]
    order = np.argsort(keys, kind="stable")
    known = set(map(tuple, edges.tolist()))
    found: List[Tuple[np.ndarray, str]] = []
    for line in named:
        grid = np.rint((line.xyz[:, :2] - tin.origin) / GRID).astype(np.int64)
        key = grid[:, 0] << 31 | grid[:, 1]
        at = order[np.minimum(np.searchsorted(keys[order], key), len(keys) - 1)]
        at[keys[at] != key] = -1
        chain: List[int] = []
        for a, b in zip(at[:-1].tolist(), at[1:].tolist()):
            if (min(a, b), max(a, b)) in known:
                chain = [*chain, b] if chain else [a, b]
            elif chain:
                found.append((np.array(chain), line.label))
                chain = []
        if chain:
            found.append((np.array(chain), line.label))
    return found


def chain_edges(edges: np.ndarray) -> List[List[int]]:
    """Edges (k, 2) of vertex numbers joined into chains of vertices, each edge once; rings repeat their first.

    Chains run from lower to higher numbers where there is a choice, so the order of ``edges`` does not matter.
    """
    beside: Dict[int, List[int]] = {}
    for a, b in sorted(map(tuple, np.sort(edges, axis=1).tolist())):
        beside.setdefault(a, []).append(b)
        beside.setdefault(b, []).append(a)
    chains = []
    ends = {vertex for vertex in beside if len(beside[vertex]) != 2}
    for vertex in [*sorted(ends), *sorted(beside)]:  # what is left after the ends are rings
        while beside[vertex]:
            chains.append(_walk(beside, vertex, ends))
    return chains


def _walk(beside: Dict[int, List[int]], vertex: int, ends: Set[int]) -> List[int]:
    """One chain from ``vertex`` to a vertex of ``ends`` or back; its edges are taken out of ``beside``."""
    chain = [vertex]
    while True:
        after = beside[vertex].pop(0)
        beside[after].remove(vertex)
        chain.append(after)
        vertex = after
        if vertex in ends or not beside[vertex] or vertex == chain[0]:
            return chain


def rim_lines(tin: Tin) -> Tuple[ConstraintLine, ...]:
    """The rim of the surface with heights: outer rings as boundaries, rings around holes as voids."""
    keys = tin.grid[:, 0] << 31 | tin.grid[:, 1]
    order = np.argsort(keys, kind="stable")
    lines = []
    for part in dissolve(tin, np.zeros(len(tin.triangles), np.int64)):
        for number, ring in enumerate(part.rings):
            grid = np.rint((ring - tin.origin) / GRID).astype(np.int64)
            at = order[np.searchsorted(keys[order], grid[:, 0] << 31 | grid[:, 1])]
            kind = LineKind.VOID if number else LineKind.BOUNDARY
            lines.append(make_line(kind, np.column_stack([ring, tin.vertices[at, 2]])))
    return tuple(lines)


def bounded_lines(tin: Tin) -> Tuple[ConstraintLine, ...]:
    """The marked lines of ``tin``; where none is a boundary, its rim takes the place of boundaries and voids."""
    lines = marked_lines(tin)
    if any(line.kind & LineKind.BOUNDARY for line in lines):
        return lines
    return (*rim_lines(tin), *(line for line in lines if not line.closed))
