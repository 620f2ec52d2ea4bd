"""Solids for the tests of earthwork, and volumes of the kinds that tests ask for often."""

from __future__ import annotations

import numpy as np

from plugin.core.earthwork.comparison import Comparison
from plugin.core.earthwork.pads import PadDesign, balance_pads
from plugin.core.earthwork.plane import Plane
from plugin.core.earthwork.ring import BaseKind, ring_base
from plugin.core.earthwork.volume import volume_between
from plugin.core.linework.constraints import Constraints, LineKind, make_line
from plugin.core.points.pointset import make_points
from plugin.core.surface.build import build_surface
from tests.core.surfaces import ORIGIN


def surface(xyz, lines=(), origin=ORIGIN):
    xyz = np.asarray(xyz, float)
    xyz = xyz + np.append(origin, 0)
    made = [make_line(LineKind.BREAKLINE, np.asarray(line, float) + np.append(origin, 0)) for line in lines]
    return build_surface(make_points(*xyz.T), Constraints(tuple(made))).tin


def square(side, z, at=(0.0, 0.0)):
    x, y = at
    return np.array([[x, y, z], [x + side, y, z], [x + side, y + side, z], [x, y + side, z]])


def closed(ring):
    return np.vstack([ring, ring[:1]])


def frustum():
    """Base 40 x 40 at 10 m, top 20 x 20 at 15 m, on ground level at 10 m."""
    base, top = square(40, 10, (10, 10)), square(20, 15, (20, 20))
    ribs = [np.array([a, b]) for a, b in zip(base, top)]
    return surface(np.vstack([square(60, 10), base, top]), [closed(base), closed(top), *ribs])


FRUSTUM = 5 / 3 * (40**2 + 20**2 + 40 * 20)


def volume_to(existing, design):
    """Cut and fill to a level, a plane or another surface."""
    return Comparison(existing, Plane(design) if isinstance(design, (int, float)) else design).volume()


def volume_in_ring(tin, ring, kind=BaseKind.SURFACE):
    """What stands above (fill) and is missing below (cut) the base that a toe or rim line spans."""
    return volume_between(ring_base(tin, ring, kind)[0], tin)


def balanced_pad(existing, outline, level, slopes, factor=1.0, surplus=0.0):
    return balance_pads(existing, [PadDesign("pad", (outline,), Plane(level), slopes)], factor, surplus)
