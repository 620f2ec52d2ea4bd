"""Edges joined to lines."""

from __future__ import annotations

from typing import Dict, List

import numpy as np


def edge_chains(ends: np.ndarray) -> List[List[int]]:
    """Join edges (k, 2), vertex numbers, to chains of vertices; each as long as edges are left.

    A closed chain repeats its first vertex. A loop over edges, for those few that are marked.
    """
    around: Dict[int, List[int]] = {}
    for a, b in ends.tolist():
        around.setdefault(a, []).append(b)
        around.setdefault(b, []).append(a)
    chains = []
    starts = [vertex for vertex, others in around.items() if len(others) != 2]
    for start in starts + list(around):
        while around[start]:
            chain = [start]
            while around[chain[-1]]:
                last, following = chain[-1], around[chain[-1]].pop()
                around[following].remove(last)
                chain.append(following)
            chains.append(chain)
    return chains
