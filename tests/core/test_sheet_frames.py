"""Sheets that cover a site, spot heights spread over them, grid marks, grid north."""

from dataclasses import replace

import numpy as np
import pytest
import shapely
from pyproj import CRS, Geod, Transformer
from scipy.spatial import cKDTree

from plugin.core.contours.spread import spread_spots
from plugin.core.georeference.ground_grid import grid_convergence
from plugin.core.handover.frames import MOST_SHEETS, grid_spacing, sheet_frames
from plugin.core.messages import SurveyError
from tests.core.surfaces import delaunay_tin, random_tin, ring


def ring_tin():
    """An annulus: the frames in its hole and outside its corners show nothing."""
    rng = np.random.default_rng(5)
    xy = np.round(rng.uniform(0, 100, (3000, 2)), 4)
    return delaunay_tin(xy, xy[:, 0], keep=ring)


@pytest.mark.parametrize("size", [(40.0, 30.0), (17.0, 23.0), (250.0, 250.0), (9.0, 9.0)])
def test_frames_cover_all_ground_and_none_is_empty(size):
    tin = ring_tin()
    width, height = size
    frames = sheet_frames(tin, width, height, 1.5, 500)
    site = shapely.union_all(shapely.polygons(tin.corners()[:, :, :2]))
    boxes = shapely.polygons(frames.corners())
    assert site.difference(shapely.union_all(boxes)).area == pytest.approx(0, abs=1e-9)
    for box in boxes:
        assert box.intersection(site).area > 0
        assert box.area == pytest.approx(width * height)


def test_neighbours_overlap_and_are_numbered_from_the_north_west():
    tin = random_tin(2000, 3)
    frames = sheet_frames(tin, 40, 30, 2.0, 500)
    assert (frames.turn == 0).all()
    order = np.lexsort((frames.column, frames.row))
    np.testing.assert_array_equal(order, np.arange(len(frames)))
    assert frames.centre[0, 1] == frames.centre[:, 1].max()
    for row in range(frames.row.max() + 1):
        east = np.diff(frames.centre[frames.row == row, 0])
        assert (40 - east >= 2.0 - 1e-9).all()
    # one frame less would leave the overlap too small
    span = np.ptp(tin.vertices[:, 0])
    assert (frames.column.max()) * (40 - 2.0) + 2.0 < span


def strip(length, half, radius=None, turn=0.0, n=4000, seed=1):
    """A street ``length`` long, straight or on an arc of ``radius``, turned by ``turn`` degrees."""
    rng = np.random.default_rng(seed)
    s, v = rng.uniform(0, length, n), rng.uniform(-half, half, n)
    angle = np.radians(turn)

    def placed(s, v):
        xy = np.column_stack([s, v])
        if radius is not None:
            xy = np.column_stack([(radius - v) * np.sin(s / radius), radius - (radius - v) * np.cos(s / radius)])
        return 400 + xy @ np.array([[np.cos(angle), np.sin(angle)], [-np.sin(angle), np.cos(angle)]])

    axis = cKDTree(placed(np.arange(0, length, 0.5), 0 * np.arange(0, length, 0.5)))
    xy = np.round(placed(s, v), 4)
    return delaunay_tin(xy, xy[:, 0], keep=lambda x, y: axis.query(np.column_stack([x, y]))[0] < half - 0.5)


@pytest.mark.parametrize("turn", [0.0, 33.0, 71.0, -58.0, 90.0])
def test_sheets_are_turned_along_a_straight_street(turn):
    """220 m by 24 m on sheets of 80 m by 60 m with 4 m shared take (220 - 4) / 76, so three, whichever way it runs."""
    tin = strip(220.0, 12.0, turn=turn)
    frames = sheet_frames(tin, 80.0, 60.0, 4.0, 500)
    assert len(frames) == 3
    covers(tin, frames)


@pytest.mark.parametrize("radius", [60.0, 90.0])
def test_sheets_follow_a_street_that_bends(radius):
    """One sheet covers no more of an arc than its diagonal; no fewer sheets than the area between the ends takes."""
    tin = strip(220.0, 10.0, radius=radius)
    frames = sheet_frames(tin, 100.0, 60.0, 4.0, 500)
    covers(tin, frames)
    chord = 2 * radius * np.arcsin(min(1.0, np.hypot(96.0, 56.0) / (2 * radius)))
    least = int(np.ceil(220.0 / chord))
    assert len(frames) <= max(least, 3)
    upright = sheet_frames(tin, 100.0, 60.0, 4.0, 500)
    np.testing.assert_array_equal(frames.centre, upright.centre)


def test_a_site_in_two_parts_far_from_each_other_has_no_sheet_between():
    rng = np.random.default_rng(4)
    xy = rng.uniform(0, 40, (600, 2)) + np.repeat([[0, 0], [20, 300]], 300, axis=0)
    tin = delaunay_tin(np.round(xy, 4), xy[:, 0], keep=lambda x, y: (y < 45) | (y > 295))
    frames = sheet_frames(tin, 60.0, 50.0, 4.0, 500)
    assert len(frames) == 2
    boxes = shapely.polygons(frames.corners())
    site = shapely.union_all(shapely.polygons(tin.corners()[:, :, :2]))
    assert site.difference(shapely.union_all(boxes)).area == pytest.approx(0, abs=1e-9)
    assert all(box.intersection(site).area > 0 for box in boxes)


def covers(tin, frames):
    site = shapely.union_all(shapely.polygons(tin.corners()[:, :, :2]))
    boxes = shapely.polygons(frames.corners())
    assert site.difference(shapely.union_all(boxes)).area == pytest.approx(0, abs=1e-9)
    for one in range(len(boxes)):
        rest = [box for other, box in enumerate(boxes) if other != one]
        if rest:  # what a sheet shares with the others is as wide as they overlap where the site goes on
            assert boxes[one].buffer(-1.9).intersection(shapely.union_all(rest).buffer(-1.9)).area > 0
    assert (np.abs(frames.turn) <= 90).all()


def test_a_site_that_fits_gets_one_frame_about_its_middle():
    tin = random_tin(500, 1)
    frames = sheet_frames(tin, 150, 150, 5, 500)
    assert len(frames) == 1
    middle = (tin.vertices[:, :2].min(axis=0) + tin.vertices[:, :2].max(axis=0)) / 2
    np.testing.assert_allclose(frames.centre[0], middle)


def test_too_small_paper_and_too_many_sheets_are_refused():
    tin = random_tin(500, 1)
    with pytest.raises(SurveyError, match="larger paper"):
        sheet_frames(tin, 4, 10, 2, 500)
    with pytest.raises(SurveyError, match=str(MOST_SHEETS)):
        sheet_frames(tin, 2, 2, 0.1, 10)


def test_spread_spots_keep_their_distance_and_cover_the_site():
    tin = random_tin(4000, 7)
    taken = np.array([[50.0, 50.0], [20.0, 70.0]])
    chosen = tin.vertices[spread_spots(tin, 10.0, taken), :2]
    every = np.vstack([chosen, taken])
    apart = np.hypot(*(every[:, None] - every[None]).transpose(2, 0, 1)) + np.where(np.eye(len(every)), np.inf, 0)
    assert apart.min() >= 5.0
    cells = set(map(tuple, np.floor(chosen / 10).astype(int).tolist()))
    assert len(cells) == len(chosen)
    assert len(chosen) >= 80  # of 100 squares


def test_spread_spots_keep_clear_of_the_lines_of_the_surface():
    tin = random_tin(4000, 7)
    kinds = np.zeros_like(tin.edge_kind)
    corner = tin.vertices[tin.triangles, :2]
    across = (corner[:, :, 1] < 50) != (np.roll(corner, -1, axis=1)[:, :, 1] < 50)
    kinds[across] = 1  # what crosses the middle stands for lines
    tin = replace(tin, edge_kind=kinds)
    row, edge = np.nonzero(kinds)
    lines = shapely.linestrings(np.stack([corner[row, edge], corner[row, (edge + 1) % 3]], axis=1))
    chosen = shapely.points(tin.vertices[spread_spots(tin, 10.0, np.empty((0, 2)), 1.5), :2])
    assert shapely.distance(shapely.union_all(lines), chosen).min() >= 1.5 / 2
    assert len(chosen) >= 70


def test_spread_spots_do_not_depend_on_the_order_of_points():
    rng = np.random.default_rng(11)
    xy = np.round(rng.uniform(0, 60, (800, 2)), 3)
    order = rng.permutation(len(xy))
    first, second = delaunay_tin(xy, xy[:, 1]), delaunay_tin(xy[order], xy[order, 1])
    one = first.vertices[spread_spots(first, 8.0, np.empty((0, 2)))]
    two = second.vertices[spread_spots(second, 8.0, np.empty((0, 2)))]
    assert set(map(tuple, one.tolist())) == set(map(tuple, two.tolist()))


@pytest.mark.parametrize(
    ("scale", "unit", "spacing", "decimals"),
    [(500, 1.0, 50.0, 0), (250, 1.0, 20.0, 0), (1000, 1.0, 100.0, 0), (5, 1.0, 0.5, 1), (480, 0.3048, 100.0, 0)],
)
def test_grid_marks_are_round_numbers_at_most_ten_centimetres_apart(scale, unit, spacing, decimals):
    assert grid_spacing(scale, unit) == (pytest.approx(spacing), decimals)
    assert spacing * unit / scale <= 0.1 + 1e-12


@pytest.mark.parametrize(("code", "east", "north"), [(25832, 548_300, 5_712_450), (32633, 400_000, 1_000_000)])
def test_grid_north_against_the_geodesic_to_the_north(code, east, north):
    """The bearing in the grid of a metre along the meridian, by PROJ's transformation and GeographicLib's geodesic."""
    crs = CRS.from_epsg(code)
    there = Transformer.from_crs(crs, crs.geodetic_crs, always_xy=True)
    lon, lat = there.transform(east, north)
    lon2, lat2, _ = Geod(ellps="GRS80").fwd(lon, lat, 0.0, 10.0)
    x, y = there.transform(lon2, lat2, direction="INVERSE")
    # the meridian's bearing in the grid is minus the convergence
    turn = np.degrees(np.arctan2(east - x, y - north))
    assert grid_convergence(crs, east, north) == pytest.approx(turn, abs=1e-4)
