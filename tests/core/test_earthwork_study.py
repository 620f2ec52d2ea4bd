"""Comparisons as a whole: restricted to regions, with a level for what is missing, by depth, as grid and as a page."""

import re
from dataclasses import replace

import numpy as np
import pytest
from pyproj import CRS

from plugin.core.earthwork.comparison import Comparison
from plugin.core.earthwork.depth_grid import depth_grid
from plugin.core.earthwork.depth_polygons import UNCHANGED, depth_polygons
from plugin.core.earthwork.depths import usual_limits, volumes_in_depths
from plugin.core.earthwork.layers import Layer
from plugin.core.earthwork.materials import EarthFactors
from plugin.core.earthwork.partition import Region
from plugin.core.earthwork.plane import Plane, plane_surface
from plugin.core.earthwork.regions import volumes_by_region
from plugin.core.earthwork.study import Certainty, StudyOptions, study
from plugin.core.earthwork.volume import volume_between
from plugin.core.messages import SurveyError
from plugin.core.report.volume_page import write_volume_page
from tests.core.earthworks import FRUSTUM, frustum, square, surface
from tests.core.surfaces import ORIGIN, random_tin


def region(name, side, at):
    return Region(name, (square(side, 0, at)[:, :2] + ORIGIN,))


def test_same_as_the_volume_between_and_exact_when_exchanged():
    a, b = random_tin(300, 1), random_tin(200, 2)
    one, other = Comparison(a, b), Comparison(b, a)
    assert one.volume() == replace(other.volume().reversed())
    plain = volume_between(a, b)
    assert one.volume().cut == pytest.approx(plain.cut, rel=1e-12)
    assert one.volume().existing_only == pytest.approx(plain.existing_only, rel=1e-9)
    inside = [region("east", 37.3, (41, 12)), region("south", 30, (30, 5))]
    one, other = (Comparison(*pair, within=inside) for pair in ((a, b), (b, a)))
    assert one.volume() == other.volume().reversed()


def test_only_inside_regions_and_what_is_not_covered_there():
    """A level of 12 m over a square that hangs half over the surface's edge, and overlaps another."""
    level = surface(square(60, 10))
    regions = [region("a", 20, (50, 10)), region("b", 20, (45, 10))]
    volume = Comparison(level, Plane(12.0), regions).volume()
    assert volume.fill == pytest.approx(2 * 15 * 20, rel=1e-9)  # the union 45..60 of both, once
    assert (volume.common_area, volume.cut, volume.existing_only) == (pytest.approx(300, rel=1e-9), 0, 0)
    small = surface(square(50, 12, (0, 0)))
    volume = Comparison(level, small, regions).volume()
    assert volume.common_area == pytest.approx(5 * 20, rel=1e-9)
    assert volume.existing_only == pytest.approx(10 * 20, rel=1e-9)
    with pytest.raises(SurveyError, match="inside the regions given"):
        Comparison(level, small, [region("far", 5, (200, 0))]).volume()


def test_a_level_stands_in_for_the_surface_that_is_missing():
    """Existing at 10 m on 0..60, design at 12 m on 40..100; 11 m where one is missing: fill 1 m, cut -1 m."""
    existing, design = surface(square(60, 10)), surface(square(60, 12, (40, 0)))
    found = Comparison(existing, design, missing_level=11.0).volume()
    assert found.fill == pytest.approx(20 * 60 * 2 + 40 * 60 * 1 + 40 * 60 * 1, rel=1e-9)
    assert (found.cut, found.existing_only, found.design_only) == (0, 0, 0)
    assert found.common_area == pytest.approx(100 * 60, rel=1e-9)
    only = Comparison(existing, design, [region("x", 50, (50, 5))], 11.0)
    assert only.volume().fill == pytest.approx(50 * (10 * 2 + 40 * 1), rel=1e-9)
    grid = depth_grid(only, 0.5)
    assert (grid.cut, grid.fill) == (0, pytest.approx(50 * (10 * 2 + 40 * 1)))
    areas = {p.label: p.plan_area for p in depth_polygons(only, (1.5,))}
    assert areas == {2: pytest.approx(500), 1: pytest.approx(2000)}


def test_surfaces_in_two_systems_are_refused_by_name():
    a = replace(surface(square(60, 10)), crs=CRS.from_epsg(25832))
    for other in (CRS.from_epsg(25833), None):
        with pytest.raises(SurveyError, match=r"before\.2dm is in EPSG:25832, after\.2dm in") as raised:
            Comparison(a, replace(a, crs=other), names=("before.2dm", "after.2dm"))
        assert ("EPSG:25833" if other else "local grid") in str(raised.value)


def test_depth_polygons_of_a_frustum():
    """Faces of 2 : 1 on a top of 20 x 20: sides at depth d are 40 - 4 d; level ground around stays as it is."""
    flat = surface(square(60, 10))
    comparison = Comparison(flat, frustum())
    polygons = depth_polygons(comparison, (1.0, 2.5))
    areas = {label: sum(p.plan_area for p in polygons if p.label == label) for label in {p.label for p in polygons}}
    assert areas == {
        UNCHANGED: pytest.approx(3600 - 1600, abs=0.01),
        1: pytest.approx(40**2 - 36**2, abs=0.01),
        2: pytest.approx(36**2 - 30**2, abs=0.01),
        3: pytest.approx(30**2, abs=0.01),
    }
    assert len(polygons) == 4
    assert {p.label for p in depth_polygons(Comparison(frustum(), flat), (1.0, 2.5))} == {-3, -2, -1, UNCHANGED}


def test_depth_polygons_agree_with_the_exact_classes():
    a, b = random_tin(400, 1), random_tin(300, 2)
    b = replace(b, vertices=b.vertices + np.column_stack([np.zeros((300, 2)), 0.02 * (b.vertices[:, 0] - 50)]))
    comparison = Comparison(a, b, [region("x", 70, (15, 10))])
    limits = usual_limits(comparison.pieces())
    assert 1 <= len(limits) <= 5
    polygons, classes = depth_polygons(comparison, limits), volumes_in_depths(comparison.pieces(), limits)
    labels = [*range(-len(limits) - 1, 0), *range(1, len(limits) + 2)]
    for label, each in zip(labels, classes):
        assert sum(p.plan_area for p in polygons if p.label == label) == pytest.approx(each.area, abs=0.1)
    assert sum(p.plan_area for p in polygons) == pytest.approx(70 * 70, abs=0.01)


def test_surfaces_that_coincide_but_for_rounding():
    """The same ground, its triangles' corners listed anew: all unchanged, no line."""
    a = random_tin(200, 3)
    turned = replace(
        a,
        triangles=np.roll(a.triangles, 1, axis=1),
        neighbours=np.roll(a.neighbours, 1, axis=1),
        edge_kind=np.roll(a.edge_kind, 1, axis=1),
    )
    found = study(Comparison(a, turned), StudyOptions(limits=(0.1,)))
    assert {p.label for p in found.polygons} == {UNCHANGED}
    assert found.zero_lines == ()
    assert found.volume.cut + found.volume.fill < 1e-9


def test_plane_as_a_surface():
    plane = Plane(81.3, 0.02, -0.03, ORIGIN[0] + 10, ORIGIN[1] + 5)
    tin = random_tin(300, 4)
    one, other = Comparison(tin, plane), Comparison(tin, plane_surface(plane, tin.bounds))
    assert one.volume().cut == pytest.approx(other.volume().cut, rel=1e-12)


@pytest.fixture(scope="module")
def whole():
    a, b = random_tin(300, 1), random_tin(250, 2)
    b = replace(b, vertices=b.vertices + np.column_stack([np.zeros((250, 2)), 0.03 * (b.vertices[:, 0] - 50)]))
    rock = surface(np.column_stack([square(140, 0, (-20, -20))[:, :2], [88.0, 90, 89, 87]]))
    options = StudyOptions(
        existing=Certainty(0.015, 0.008, ground=True),
        design=Certainty(0.02),
        offset_sigma=0.01,
        factors=EarthFactors(1.25, 0.9, 0.1),
        truck=12.0,
        topsoil=0.2,
        line=np.array([[10, 50], [90, 55.0]]) + ORIGIN,
        step=5.0,
        half_width=15.0,
        uppermost="soil",
        layers=(Layer("rock", rock),),
    )
    regions = [region("west", 40, (5, 20)), region("east", 40, (45, 20)), region("rim", 30, (80, 60))]
    return study(Comparison(a, b, names=("before.2dm", "after.2dm")), options, regions)


def test_regions_depths_and_layers_agree_with_the_whole(whole):
    volume, volumes = whole.volume, whole.volumes
    plain = volumes_by_region(whole.comparison.existing, whole.comparison.design, whole.regions_drawn)
    assert [r.part.cut for r in whole.regions] == pytest.approx([r.cut for r in plain.regions], rel=1e-12)
    for kind in ("cut", "fill", "net", "common_area"):
        parts = sum(getattr(r.part, kind) for r in whole.regions) + getattr(volumes.outside, kind)
        assert parts == pytest.approx(getattr(volume, kind), rel=1e-9)
    for each in (whole, *whole.regions):
        cut = each.doubt.cut.value + each.doubt.noise_excess  # of the triangles
        assert sum(c.volume for c in each.depths if c.is_cut) == pytest.approx(cut, rel=1e-9)
        assert sum(layer.cut for layer in each.layers.layers) + each.layers.unknown == pytest.approx(cut, rel=1e-9)
    assert sum(bar.area for bar in whole.bars) == pytest.approx(volume.cut_area + volume.fill_area, rel=1e-9)
    assert whole.two_surveys
    assert whole.measured == volume  # rough ground tells no offset
    assert whole.doubt.cut.value == pytest.approx(volume.cut - whole.doubt.noise_excess)
    assert whole.doubt.net.value == pytest.approx(volume.net)
    systematic = [r.doubt.cut.systematic for r in whole.regions]
    assert sum(systematic) < whole.doubt.cut.systematic
    assert whole.regions[2].part.uncovered_area > 10


def test_other_methods_come_near(whole):
    grid, ends, prisms = whole.checks
    assert abs(grid.cut_difference) < 0.01 * grid.exact_cut
    assert abs(prisms.cut_difference) < 0.05 * prisms.exact_cut
    assert ends.exact_cut == prisms.exact_cut
    assert grid.exact_cut == whole.volume.cut


def test_earth_is_hauled_along_the_line(whole):
    """A ground that is cut in its first half and filled alike in the second: all of it is carried across the middle.

    Cut and fill of 1 m x 20 m x 50 m each, whose middles are 50 m apart (any text on route surveying has the method).
    """
    ground = surface(square(100, 10.0))
    x = np.array([0.0, 49.999, 50.001, 100.0])
    places = np.column_stack([np.tile(x, 2), np.repeat([0.0, 100.0], 4), np.tile([9.0, 9.0, 11.0, 11.0], 2)])
    options = StudyOptions(line=np.array([[0.0, 50], [100, 50]]) + ORIGIN, step=5.0, half_width=10.0)
    found = study(Comparison(ground, surface(places)), options)
    (haul,) = found.haul.hauls
    assert haul.volume == pytest.approx(1000, rel=1e-3)
    assert haul.mean_distance == pytest.approx(50, rel=1e-3)
    assert haul.forward
    assert found.haul.rest == pytest.approx(0, abs=1e-6)
    assert found.haul.cut.sum() + found.haul.beside_cut == pytest.approx(found.volume.cut, rel=1e-9)
    assert study(Comparison(ground, surface(places))).haul is None


def test_page(whole, tmp_path):
    write_volume_page(whole, tmp_path / "page.html")
    page = (tmp_path / "page.html").read_text(encoding="utf-8")
    assert "Earthwork: before.2dm to after.2dm" in page
    for text in ("not a payment certificate", "buried services", "fill less cut", "topsoil", "prismoidal", "rock"):
        assert text in page
    told = re.search(r"cut ([\d\u202f.]+) ± ([\d.]+) m³", page)
    assert float(told.group(1).replace("\u202f", "")) == pytest.approx(whole.doubt.cut.value, rel=1e-3)
    assert float(told.group(2)) == pytest.approx(whole.doubt.cut.half_95, rel=0.05)
    assert page.count("<img") == 3  # map, histogram, mass diagram
    assert "Mass diagram" in page
    write_volume_page(whole, tmp_path / "again.html")
    assert (tmp_path / "again.html").read_bytes() == (tmp_path / "page.html").read_bytes()


def test_page_in_feet(tmp_path):
    """Cubic yards of 27 cubic feet, exactly 0.764554857984 m³ (0.9144 m cubed) for the international foot."""
    feet = CRS.from_proj4("+proj=tmerc +lon_0=9 +units=ft +type=crs")
    flat, solid = (replace(tin, crs=feet) for tin in (surface(square(60, 10)), frustum()))
    found = study(Comparison(flat, solid, names=("a", "b")))
    write_volume_page(found, tmp_path / "page.html")
    page = (tmp_path / "page.html").read_text(encoding="utf-8")
    assert f"fill {FRUSTUM / 0.764554857984:,.0f}".replace(",", "\u202f") in page
    assert "yd³" in page
    assert "ft²" in page
