"""Ground that a survey spans without having measured it is told with a volume."""

from __future__ import annotations

import numpy as np
import pytest

from plugin.core.earthwork.comparison import Comparison
from plugin.core.earthwork.study import Certainty, StudyOptions, study
from plugin.core.earthwork.wide_triangles import FACTOR, wide_area
from plugin.core.points.pointset import make_points
from plugin.core.surface.build import SurfaceOptions, build_surface
from plugin.core.surface.tin import Tin

REACH = 30.0


def angle(rim: float = float("nan")) -> Tin:
    """A survey over two thirds of a square: an L, whose inner corner a hull bridges; points every 2 m."""
    x, y = (each.ravel() for each in np.meshgrid(np.arange(0, REACH + 1, 2.0), np.arange(0, REACH + 1, 2.0)))
    inside = (x <= REACH / 3) | (y <= REACH / 3)
    z = np.random.default_rng(2).normal(10, 0.005, np.count_nonzero(inside))
    options = SurfaceOptions() if rim != rim else SurfaceOptions(max_rim_edge=rim)
    return build_surface(make_points(x[inside], y[inside], z), options=options).tin


def told(tin: Tin) -> list:
    certain = Certainty(0.005, ground=True)
    options = StudyOptions(existing=certain, design=certain, drawn=False)
    found = study(Comparison(tin, angle(rim=3.0), names=("earlier", "later")), options)
    return [one for one in found.messages if one.text.code == "earthwork.wide_triangles"]


def test_the_area_that_a_hull_bridges() -> None:
    """Half of the square that the L leaves out, but for what its narrower triangles have of it."""
    area, limit = wide_area(angle())
    assert limit == pytest.approx(FACTOR * np.sqrt(8))
    assert 0.75 * (2 / 3 * REACH) ** 2 / 2 < area < (2 / 3 * REACH) ** 2 / 2
    assert wide_area(angle(rim=3.0))[0] == 0


def test_it_is_told_with_the_volume() -> None:
    (said,) = told(angle())
    assert said.values["name"] == "earlier"
    assert 150 < said.values["area"] < 200
    assert told(angle(rim=3.0)) == []
