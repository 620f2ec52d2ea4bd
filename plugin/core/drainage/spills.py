"""The way that water takes from a full pond to the next one, the rim or an inlet."""

from __future__ import annotations

from typing import List, Tuple

import numpy as np

from .flow import Flow
from .paths import trace_paths
from .ponds import Ponds


def spill_paths(flow: Flow, ponds: Ponds) -> Tuple[np.ndarray, ...]:
    """For each pond the line (q, 3) of its overflow in metres of the CRS, from its spill point to the pit of the pond
    it spills into, to the rim or an inlet; the spill point alone where water leaves the surface there.

    Hollows that do not count as ponds let it pass.
    """
    over = ponds.filling.over[ponds.node]
    spill = ponds.spill_xyz + np.append(ponds.origin, 0.0)
    lines: List[np.ndarray] = [spill[i : i + 1] for i in range(len(ponds))]
    on = np.flatnonzero(over >= 0)
    beyond = flow.tin.vertices[over[on]] + np.append(flow.tin.origin, 0.0)
    ends_there = flow.on_rim[over[on]] | (flow.vertex_sink[over[on]] >= 0)
    paths = trace_paths(flow, beyond[:, :2], ponds.passages(flow))
    for k, i in enumerate(on.tolist()):
        way = beyond[k : k + 1] if ends_there[k] else paths.path(k)
        if len(way) and not np.array_equal(way[0], lines[i][0]):
            way = np.concatenate([lines[i], way])
        lines[i] = way if len(way) else lines[i]
    return tuple(lines)
