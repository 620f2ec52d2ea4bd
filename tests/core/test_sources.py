"""Survey points behind the vertices of a surface that came from a file."""

from dataclasses import replace

import numpy as np

from plugin.core.points.pointset import Status, make_points
from plugin.core.surface.build import build_surface
from plugin.core.surface.inspection import inspect_surface
from plugin.core.surface.sources import with_sources


def survey():
    rng = np.random.default_rng(3)
    east, north = rng.uniform(0, 50, (2, 200)) + np.array([[500000.0], [5700000.0]])
    status = np.zeros(200, np.uint8)
    status[::10] = Status.REJECTED
    return make_points(east, north, rng.normal(10, 0.02, 200), status=status)


def test_the_points_that_made_the_vertices_are_found_again():
    points = survey()
    tin = build_surface(points).tin
    lost = replace(tin, vertex_source=np.full(len(tin.vertices), -1))
    np.testing.assert_array_equal(with_sources(lost, points).vertex_source, tin.vertex_source)


def test_one_step_of_the_grid_aside_is_the_same_place_and_two_are_not():
    points = survey()
    tin = build_surface(points).tin
    aside = replace(points, easting=points.easting + 1e-4, northing=points.northing - 1e-4)
    np.testing.assert_array_equal(with_sources(tin, aside).vertex_source, tin.vertex_source)
    away = replace(points, easting=points.easting + 3e-4)
    assert (with_sources(tin, away).vertex_source == -1).all()


def test_no_points():
    none = make_points([], [], [])
    tin = build_surface(survey()).tin
    assert (with_sources(tin, none).vertex_source == -1).all()
    found = inspect_surface(tin, none)
    assert found
    assert not any("nan" in str(finding.message) for finding in found)
