"""The same site walked without a code: to and fro across lane, field and ditch, the receiver storing by itself."""

from __future__ import annotations

from typing import List

import numpy as np

from test_data import demo_survey as s
from test_data import ground as g
from test_data.demo_walk import Walk, back_and_forth, polyline, to_rim

SEED = 20250416
BETWEEN = 2.9  # m from pass to pass
WEEK_LATER = 7 * 86400.0
HEADER = "name,easting,northing,height,sigma_h,sigma_v,fix,time"


def open_site(x: np.ndarray, y: np.ndarray) -> np.ndarray:
    """Everywhere inside but in the pump house."""
    house = g.pump_house()
    clear = ~g.inside(house, x, y) & (to_rim(x, y, house) > 0.4)
    return g.inside(g.SITE, x, y) & (to_rim(x, y, g.SITE) > 0.5) & clear


def uncoded() -> List[str]:
    """The lines of the file."""
    random = np.random.RandomState(SEED)
    walk = Walk(random)
    walk.clock += WEEK_LATER
    rows = np.arange(-1.5, 120.5, BETWEEN)
    # Passes along y: those along x with the axes exchanged.
    corners = back_and_forth(rows, lambda v, u: open_site(u, v))
    walk.along(*polyline([(u, v) for v, u in corners]), open_site)
    x, y, time = np.array(walk.x), np.array(walk.y), np.array(walk.time)
    parts = [(s.PLAN_SLOW, s.PLAN_QUICK), (s.PLAN_SLOW, s.PLAN_QUICK), (s.HEIGHT_SLOW, s.HEIGHT_QUICK)]
    noise = [s.rtk_noise(time, slow, quick, random) for slow, quick in parts]
    east, north = g.to_shift(x, y)
    height = g.site_height(x, y) + noise[2]
    claimed = random.uniform(0.85, 1.15, (2, len(x)))
    lines = [HEADER, "# Pippin Field, walked without codes; EPSG:25832, heights in metres; invented"]
    for k in range(len(x)):
        cells = [
            str(k + 1),
            s.plan_text(east[k] + noise[0][k], north[k] + noise[1][k]),
            f"{height[k]:.3f}",
            f"{0.0100 * claimed[0, k]:.3f}",
            f"{0.0150 * claimed[1, k]:.3f}",
            "4",
            s.time_text(time[k]),
        ]
        lines.append(",".join(cells))
    return lines
