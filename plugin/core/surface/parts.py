"""What hangs together: connected parts of numbered things such as triangles."""

from __future__ import annotations

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components


def connected_parts(count: int, one: np.ndarray, other: np.ndarray) -> np.ndarray:
    """Number of the part (count,) each of ``count`` things is in; ``one[i]`` and ``other[i]`` (p,) hang together."""
    graph = coo_matrix((np.ones(len(one), bool), (one, other)), shape=(count, count))
    part: np.ndarray = connected_components(graph, directed=False)[1]
    return part
