"""The true ground of the demo survey, in closed form.

The place is invented: an old orchard, "Pippin Field", that becomes a school ground. Everything is
laid out in site coordinates x, y (metres, x roughly east) and turned and shifted into EPSG:25832.
Between the lines that the survey codes (kerb top and foot, lane edge, verge, ditch, basin) the
ground is straight across, so that a surface that keeps those lines can follow it; elsewhere it is
gently curved (radius of curvature over 90 m).
"""

from __future__ import annotations

from typing import Any, Tuple

import numpy as np

Pair = Tuple[np.ndarray, np.ndarray]

CRS = "EPSG:25832"
ORIGIN_EASTING, ORIGIN_NORTHING = 548240, 5712380
TURN = np.radians(12.0)

#: Corners of the site, counter-clockwise, site coordinates.
SITE = np.array([(0, 0), (118, -2), (122, 38), (117, 87), (60, 90.5), (2, 86), (-3, 40)], float)

# Lane: straight, left-hand arc, straight; station 0 where x = 0.
LANE_Y, ARC_START, ARC_RADIUS, ARC_ANGLE = 14.0, 62.0, 60.0, np.radians(25.0)
ARC_END = ARC_START + ARC_RADIUS * ARC_ANGLE
HALF_WIDTH = 2.5
KERB_OFFSET = 0.10
KERB_TOP = HALF_WIDTH + KERB_OFFSET
VERGE_BACK = 5.0
KERB_FACE = 0.12
CROSSFALL = 0.02
#: Kerb face by station: lowered at both ends, and on the left at the field gate (0.03 m).
FACE_RIGHT = ((1.5, 3.5, 94.0, 96.0), (0.0, KERB_FACE, KERB_FACE, 0.0))
FACE_LEFT = (
    (1.5, 3.5, 46.0, 47.5, 52.5, 54.0, 94.0, 96.0),
    (0.0, KERB_FACE, KERB_FACE, 0.03, 0.03, KERB_FACE, KERB_FACE, 0.0),
)

# Ditch: V-shaped, offsets measured along y.
DITCH_START, DITCH_END, DITCH_HALF_WIDTH = 8.0, 86.0, 1.3
DITCH_DEPTH = ((8.0, 20.0, 83.0, 86.0), (0.0, 0.6, 0.6, 0.0))

# Infiltration basin: elliptic rim and toe, level floor.
BASIN_CENTRE = (100.0, 72.0)
BASIN_RIM, BASIN_TOE, BASIN_DEPTH = (9.0, 6.0), (6.4, 3.4), 0.7

# The pump house that is no more: its floor slab was left out of the survey.
PUMP_HOUSE_CENTRE, PUMP_HOUSE_SIZE, PUMP_HOUSE_TURN = (86.0, 45.0), (6.0, 4.5), np.radians(28.0)

MOUND_CENTRE, MOUND_HEIGHT, MOUND_RADIUS = (104.0, 50.0), 0.8, 9.0


def to_shift(x: np.ndarray, y: np.ndarray) -> Pair:
    """Easting and northing less the origin, from site coordinates; metres, same shape."""
    c, s = np.cos(TURN), np.sin(TURN)
    return c * x - s * y, s * x + c * y


def to_grid(x: np.ndarray, y: np.ndarray) -> Pair:
    """Easting and northing (EPSG:25832, metres) of site coordinates, same shape."""
    east, north = to_shift(np.asarray(x, float), np.asarray(y, float))
    return east + ORIGIN_EASTING, north + ORIGIN_NORTHING


def to_site(easting: np.ndarray, northing: np.ndarray) -> Pair:
    """Site coordinates of easting and northing, metres, same shape."""
    c, s = np.cos(TURN), np.sin(TURN)
    east = np.asarray(easting, float) - ORIGIN_EASTING
    north = np.asarray(northing, float) - ORIGIN_NORTHING
    return c * east + s * north, -s * east + c * north


def true_height(easting: np.ndarray, northing: np.ndarray) -> np.ndarray:
    """True ground height (metres) at grid coordinates; any shape, also outside the boundary."""
    return site_height(*to_site(easting, northing))


def boundary() -> np.ndarray:
    """(7, 2) easting, northing of the site's corners, counter-clockwise, not closed."""
    return np.column_stack(to_grid(SITE[:, 0], SITE[:, 1]))


def void() -> np.ndarray:
    """(4, 2) easting, northing of the pump house's corners, counter-clockwise, not closed."""
    corners = pump_house()
    return np.column_stack(to_grid(corners[:, 0], corners[:, 1]))


def pump_house() -> np.ndarray:
    """(4, 2) corners of the pump house in site coordinates, counter-clockwise."""
    half = np.array(PUMP_HOUSE_SIZE) / 2
    unit = np.array([(-1, -1), (1, -1), (1, 1), (-1, 1)]) * half
    c, s = np.cos(PUMP_HOUSE_TURN), np.sin(PUMP_HOUSE_TURN)
    return unit @ np.array([(c, s), (-s, c)]) + np.array(PUMP_HOUSE_CENTRE)


def inside(polygon: np.ndarray, x: np.ndarray, y: np.ndarray) -> np.ndarray:
    """Mask of the places x, y within ``polygon`` (k, 2), by the even-odd rule."""
    x, y = np.asarray(x, float), np.asarray(y, float)
    within = np.zeros(np.broadcast(x, y).shape, bool)
    for (xa, ya), (xb, yb) in zip(polygon, np.roll(polygon, -1, axis=0)):
        if ya != yb:
            within ^= ((ya > y) != (yb > y)) & (x < xa + (y - ya) * (xb - xa) / (yb - ya))
    return within


# --- the parts of the ground, in site coordinates -------------------------------------------------


def site_height(x: Any, y: Any) -> np.ndarray:
    """True height at site coordinates, metres, same shape."""
    x, y = np.broadcast_arrays(np.asarray(x, float), np.asarray(y, float))
    height = natural_height(x, y)
    in_ditch = (x >= DITCH_START) & (x <= DITCH_END) & (np.abs(y - ditch_line(x)) < DITCH_HALF_WIDTH)
    height = np.where(in_ditch, ditch_height(x, y), height)
    height = np.where(_ellipse(x, y, BASIN_RIM) < 1, basin_height(x, y), height)
    station, offset = lane_place(x, y)
    return np.where(np.abs(offset) < VERGE_BACK, lane_height(station, offset), height)


def natural_height(x: np.ndarray, y: np.ndarray) -> np.ndarray:
    """The hillside with the old mound, before anything was dug."""
    square = ((x - MOUND_CENTRE[0]) ** 2 + (y - MOUND_CENTRE[1]) ** 2) / MOUND_RADIUS**2
    return hillside(x, y) + MOUND_HEIGHT * np.exp(-square / 2)


def hillside(x: np.ndarray, y: np.ndarray) -> np.ndarray:
    """The hillside before anything was dug or heaped: falls to the north-east, flatter below."""
    slope = 91.8 - 0.052 * x + 0.00012 * x**2 - 0.042 * y + 0.0001 * y**2
    waves = (
        0.07 * np.sin(2 * np.pi * (0.8 * x + 0.6 * y) / 52 + 0.7)
        + 0.035 * np.sin(2 * np.pi * (0.5 * x - 0.87 * y) / 33 + 2.1)
        + 0.012 * np.sin(2 * np.pi * (0.9 * x - 0.44 * y) / 21)
    )
    return slope + waves


def lane_place(x: np.ndarray, y: np.ndarray) -> Pair:
    """Station and offset (metres, left positive) from the lane's centreline."""
    angle = np.arctan2(x - ARC_START, LANE_Y + ARC_RADIUS - y)
    radius = np.hypot(x - ARC_START, LANE_Y + ARC_RADIUS - y)
    end_x = ARC_START + ARC_RADIUS * np.sin(ARC_ANGLE)
    end_y = LANE_Y + ARC_RADIUS * (1 - np.cos(ARC_ANGLE))
    c, s = np.cos(ARC_ANGLE), np.sin(ARC_ANGLE)
    along, left = c * (x - end_x) + s * (y - end_y), -s * (x - end_x) + c * (y - end_y)
    parts = [x < ARC_START, angle <= ARC_ANGLE]
    station = np.select(parts, [x, ARC_START + ARC_RADIUS * angle], ARC_END + along)
    return station, np.select(parts, [y - LANE_Y, ARC_RADIUS - radius], left)


def lane_xy(station: Any, offset: Any) -> Pair:
    """Site coordinates of a station and offset of the lane; the inverse of :func:`lane_place`."""
    station, offset = np.broadcast_arrays(np.asarray(station, float), np.asarray(offset, float))
    angle = np.clip((station - ARC_START) / ARC_RADIUS, 0, ARC_ANGLE)
    before, after = np.minimum(station - ARC_START, 0), np.maximum(station - ARC_END, 0)
    radius = ARC_RADIUS - offset
    x = ARC_START + before + radius * np.sin(angle) + after * np.cos(angle)
    return x, LANE_Y + ARC_RADIUS - radius * np.cos(angle) + after * np.sin(angle)


def kerb_face(station: np.ndarray, offset: np.ndarray) -> np.ndarray:
    """Height of the kerb's face (metres) at a station, on the side of ``offset``."""
    return np.where(offset > 0, np.interp(station, *FACE_LEFT), np.interp(station, *FACE_RIGHT))


def lane_height(station: np.ndarray, offset: np.ndarray) -> np.ndarray:
    """Lane, kerb face and verge: straight across from line to line."""
    centre = 91.3 - 0.0525 * station + 0.000085 * station**2
    side = np.where(offset > 0, 1.0, -1.0)
    foot = centre - CROSSFALL * side * HALF_WIDTH
    top = foot + kerb_face(station, offset)
    back = natural_height(*lane_xy(station, side * VERGE_BACK))
    away = np.abs(offset)
    face = foot + (top - foot) * (away - HALF_WIDTH) / KERB_OFFSET
    verge = top + (back - top) * (away - KERB_TOP) / (VERGE_BACK - KERB_TOP)
    return np.select([away <= HALF_WIDTH, away <= KERB_TOP], [centre - CROSSFALL * offset, face], verge)


def ditch_line(x: np.ndarray) -> np.ndarray:
    """y of the ditch's bottom line at x."""
    return 78 + 0.055 * (x - DITCH_START) - 0.0004 * (x - DITCH_START) ** 2


def ditch_height(x: np.ndarray, y: np.ndarray) -> np.ndarray:
    """Height within the ditch: straight from either top edge to the bottom line."""
    middle = ditch_line(x)
    left = natural_height(x, middle + DITCH_HALF_WIDTH)
    right = natural_height(x, middle - DITCH_HALF_WIDTH)
    bottom = (left + right) / 2 - np.interp(x, *DITCH_DEPTH)
    share = np.abs(y - middle) / DITCH_HALF_WIDTH
    return bottom + (np.where(y > middle, left, right) - bottom) * share


def basin_height(x: np.ndarray, y: np.ndarray) -> np.ndarray:
    """Height within the basin: level floor, banks straight from toe to rim along rays."""
    floor = natural_height(*(np.array(v) for v in BASIN_CENTRE)) - BASIN_DEPTH
    to_rim = np.maximum(_ellipse(x, y, BASIN_RIM), 1e-9)
    to_toe = np.maximum(_ellipse(x, y, BASIN_TOE), 2e-9)
    rim_x = BASIN_CENTRE[0] + (x - BASIN_CENTRE[0]) / to_rim
    rim_y = BASIN_CENTRE[1] + (y - BASIN_CENTRE[1]) / to_rim
    share = np.clip((1 - 1 / to_toe) / (1 / to_rim - 1 / to_toe), 0, 1)
    return floor + (natural_height(rim_x, rim_y) - floor) * share


def _ellipse(x: np.ndarray, y: np.ndarray, axes: Tuple[float, float]) -> np.ndarray:
    """Distance from the basin's centre as a share of the distance to the ellipse on the same ray."""
    return np.hypot((x - BASIN_CENTRE[0]) / axes[0], (y - BASIN_CENTRE[1]) / axes[1])
