"""Volumes by region, by depth and by layer."""

from dataclasses import replace

import numpy as np
import pytest

from plugin.core.earthwork.depths import volumes_in_depths
from plugin.core.earthwork.layers import Layer, layers_in_cut
from plugin.core.earthwork.overlay import common_pieces
from plugin.core.earthwork.partition import Region
from plugin.core.earthwork.plane import Plane, plane_pieces
from plugin.core.earthwork.regions import pieces_by_region, volumes_by_region, volumes_in_regions
from plugin.core.earthwork.volume import volume_between
from plugin.core.messages import SurveyError
from tests.core.earthworks import FRUSTUM, frustum, square, surface, volume_to
from tests.core.surfaces import ORIGIN, random_tin


def box(name, x, y, width, height):
    ring = np.array([[x, y], [x + width, y], [x + width, y + height], [x, y + height]]) + ORIGIN
    return Region(name, (ring,))


def lifted(tin, by):
    return replace(tin, vertices=tin.vertices + np.array([0, 0, by]))


def test_quarters_of_a_frustum():
    quarters = [box(f"{i}{j}", 30 * i, 30 * j, 30, 30) for i in (0, 1) for j in (0, 1)]
    found = volumes_by_region(surface(square(60, 10)), frustum(), quarters)
    for part in found.regions:
        assert part.fill == pytest.approx(FRUSTUM / 4, rel=1e-12)
        assert part.fill_area == pytest.approx(400)
        assert part.mean_fill_depth == pytest.approx(FRUSTUM / 1600)
        assert np.isnan(part.mean_cut_depth)
        assert (part.area, part.uncovered_area) == (pytest.approx(900), pytest.approx(0, abs=1e-9))
    assert found.outside.common_area == pytest.approx(0, abs=1e-9)
    assert found.overlaps == ()


def test_any_split_adds_up_to_the_whole():
    rng = np.random.default_rng(3)
    a, b = random_tin(300, 1), random_tin(250, 2)
    whole = volume_between(a, b)
    cuts = np.sort(np.concatenate([[-10, 110], rng.uniform(0, 100, 7)]))
    slant = rng.uniform(-20, 20, len(cuts))
    strips = [
        Region(str(i), (np.array([[cuts[i] + slant[i], -10], [cuts[i + 1] + slant[i + 1], -10],
                                  [cuts[i + 1], 110], [cuts[i], 110]]) + ORIGIN,))
        for i in range(len(cuts) - 1)
    ]  # fmt: skip
    for regions in (strips, strips[2:5], strips[:1]):
        found = volumes_by_region(a, b, regions)
        total = found.total
        assert (total.cut, total.fill) == (pytest.approx(whole.cut, rel=1e-10), pytest.approx(whole.fill, rel=1e-10))
        assert total.common_area == pytest.approx(whole.common_area, rel=1e-10)
        if not found.overlaps:
            for name in ("cut", "fill", "cut_area", "fill_area", "common_area"):
                parts = sum(getattr(p, name) for p in (*found.regions, found.outside))
                assert parts == pytest.approx(getattr(total, name), rel=1e-10)


def test_holes_islands_overlaps_and_ground_without_surface():
    existing, design = surface(square(60, 10)), surface(square(60, 12))
    holed = Region("lot", (box("", 10, 10, 40, 40).rings[0], box("", 20, 20, 20, 20).rings[0]))
    island = box("island", 25, 25, 10, 10)
    over = box("over", 40, 0, 40, 60)
    found = volumes_by_region(existing, design, [holed, island, over])
    lot, isle, east = found.regions
    assert lot.fill == pytest.approx(2 * (1600 - 400), rel=1e-9)
    assert isle.fill == pytest.approx(200, rel=1e-9)
    assert (east.fill, east.uncovered_area) == (pytest.approx(2 * 20 * 60, rel=1e-9), pytest.approx(20 * 60))
    (both,) = found.overlaps
    assert both.name == "lot + over"
    assert both.fill == pytest.approx(2 * 10 * 40, rel=1e-9)
    everything = lot.fill + isle.fill + east.fill - both.fill + found.outside.fill
    assert everything == pytest.approx(found.total.fill, rel=1e-12)
    with pytest.raises(SurveyError, match="Region bad"):
        volumes_by_region(existing, design, [Region("bad", (ORIGIN + np.zeros((2, 2)),))])


def test_regions_to_a_level():
    tin = random_tin(200, 8)
    found = volumes_in_regions(plane_pieces(tin, Plane(100)), [box("w", -5, -5, 50, 120)], tin.bounds)
    whole = volume_to(tin, 100)
    assert found.regions[0].cut + found.outside.cut == pytest.approx(whole.cut, rel=1e-10)
    assert 0 < found.regions[0].cut < whole.cut


def test_exchanging_the_surfaces_by_region():
    a, b = random_tin(200, 1), random_tin(150, 2)
    regions = [box("w", -5, -5, 50, 120), box("e", 40, -5, 70, 120)]
    one, other = volumes_by_region(a, b, regions), volumes_by_region(b, a, regions)
    assert [(p.cut, p.fill) for p in one.regions] == [(p.fill, p.cut) for p in other.regions]
    assert one.overlaps[0].net == -other.overlaps[0].net


def test_depths_and_layers_of_one_region():
    a, b = random_tin(200, 1), lifted(random_tin(150, 2), -0.5)
    regions = [box("w", -5, -5, 50, 120), box("e", 45, -5, 70, 120)]
    whole = volumes_by_region(a, b, regions)
    parts = pieces_by_region(common_pieces(a, b), regions, a.bounds)
    for part, region in zip(parts, whole.regions):
        classes = volumes_in_depths(part, (0.2, 1.0))
        assert sum(c.volume for c in classes if c.is_cut) == pytest.approx(region.cut, rel=1e-10)
        layers = layers_in_cut(part, "soil", [Layer("rock", lifted(random_tin(100, 3), -0.4))])
        assert sum(v.cut for v in layers.layers) + layers.unknown == pytest.approx(region.cut, rel=1e-10)


def test_depth_classes_of_a_pyramid():
    """Above relative height t of a pyramid lies (1 - t)³ of it, on (1 - t)² of its base."""
    pyramid = surface(np.vstack([square(30, 0), [[15, 15, 6]]]))
    total = 30 * 30 * 6 / 3
    classes = volumes_in_depths(common_pieces(surface(square(30, 0)), pyramid), (1.5, 3.0))
    assert [(c.low, c.high) for c in classes[3:]] == [(0, 1.5), (1.5, 3), (3, np.inf)]
    ends = [0, 0.25, 0.5, 1.0]
    for c, s, t in zip(classes[3:], ends[:-1], ends[1:]):
        area = 900 * ((1 - s) ** 2 - (1 - t) ** 2)
        inner = total * ((1 - s) ** 3 - (1 - t) ** 3) + 6 * 900 * (s * (1 - s) ** 2 - t * (1 - t) ** 2)
        assert (c.area, c.volume) == (pytest.approx(area, rel=1e-10), pytest.approx(inner, rel=1e-10))
    assert all(c.volume == 0 and c.is_cut for c in classes[:3])
    turned = volumes_in_depths(common_pieces(pyramid, surface(square(30, 0))), (1.5, 3.0))
    assert [c.volume for c in turned[:3]] == pytest.approx([c.volume for c in classes[:2:-1]], rel=1e-12)


def test_depth_classes_add_up_and_take_a_level_part_at_a_limit_once():
    a, b = random_tin(300, 1), random_tin(250, 2)
    whole = volume_between(a, b)
    classes = volumes_in_depths(common_pieces(a, b), (0.05, 0.2, 0.5, 4.0))
    assert sum(c.volume for c in classes if c.is_cut) == pytest.approx(whole.cut, rel=1e-10)
    assert sum(c.volume for c in classes if not c.is_cut) == pytest.approx(whole.fill, rel=1e-10)
    assert sum(c.area for c in classes if not c.is_cut) == pytest.approx(whole.fill_area, rel=1e-10)
    flat = volumes_in_depths(plane_pieces(surface(square(10, 1)), Plane(3)), (2.0, 4.0))
    assert [c.volume for c in flat] == [0, 0, 0, pytest.approx(200), 0, 0]
    for bad in ((2.0, 1.0), (0.0, 1.0), (-1.0,)):
        with pytest.raises(SurveyError, match="depth limits"):
            volumes_in_depths(common_pieces(a, b), bad)


def test_layers_of_a_trench():
    """Level layers and a level floor: thickness times area each; a wedge of the second one runs out."""
    ground, floor = surface(square(20, 10)), surface(square(20, 6))
    soil, rock = Layer("clay", surface(square(20, 9.5))), Layer("rock", surface(square(20, 7)))
    found = layers_in_cut(common_pieces(ground, floor), "topsoil", [soil, rock])
    assert [(v.name, v.cut) for v in found.layers] == [
        ("topsoil", pytest.approx(200)), ("clay", pytest.approx(1000)), ("rock", pytest.approx(400)),
    ]  # fmt: skip
    assert found.unknown == pytest.approx(0, abs=1e-9)
    slanted = square(20, 0)
    slanted[:, 2] = 5 + slanted[:, 0] * 0.4  # rises from 5 to 13, meets the floor at 2.5 m and the ground at 12.5 m
    found = layers_in_cut(common_pieces(ground, floor), "soil", [Layer("rock", surface(slanted))])
    rock_cut = 20 * (4 * 10 / 2 + 4 * 7.5)
    assert [v.cut for v in found.layers] == [pytest.approx(1600 - rock_cut), pytest.approx(rock_cut)]


def test_layers_that_cross_or_are_missing_and_their_sum():
    ground, design = random_tin(300, 1), lifted(random_tin(250, 2), -1.0)
    tops = [lifted(random_tin(200, 3), -0.4), lifted(random_tin(180, 4), -0.5)]
    found = layers_in_cut(common_pieces(ground, design), "a", [Layer("b", tops[0]), Layer("c", tops[1])])
    assert all(v.cut > 0 for v in found.layers)
    assert sum(v.cut for v in found.layers) + found.unknown == pytest.approx(found.cut, rel=1e-10)
    assert found.cut == pytest.approx(volume_between(ground, design).cut, rel=1e-10)
    half = random_tin(200, 3, keep=lambda x, y: x < 50)
    part = layers_in_cut(common_pieces(ground, design), "a", [Layer("b", lifted(half, -0.4))])
    assert 0.3 * part.cut < part.unknown < 0.7 * part.cut


def test_layer_volumes_by_sampling():
    """A midpoint grid of heights, min and max taken place by place, comes within 0.5 %."""
    from plugin.core.surface.locate import heights_at

    ground, design = random_tin(300, 1), lifted(random_tin(250, 2), -1.0)
    tops = [lifted(random_tin(200, 3), -0.4), lifted(random_tin(180, 4), -0.5)]
    found = layers_in_cut(common_pieces(ground, design), "a", [Layer("b", tops[0]), Layer("c", tops[1])])
    s = (np.arange(300) + 0.5) / 3
    xy = np.stack(np.meshgrid(s, s), axis=-1).reshape(-1, 2) + ORIGIN
    e, d, *t = (heights_at(tin, xy) for tin in (ground, design, *tops))
    known = np.isfinite(e + d + t[0] + t[1])
    bottom = [e, np.minimum(e, t[0]), np.minimum(np.minimum(e, t[0]), t[1]), None]
    below = [np.sum(np.maximum(0, low[known] - d[known])) / 9 for low in bottom[:3]] + [0]
    for k, layer in enumerate(found.layers):
        assert layer.cut == pytest.approx(below[k] - below[k + 1], rel=0.005)
