"""Basins against closed forms and against levels found by flooding a grid."""

from dataclasses import replace

import numpy as np
import pytest
from scipy import ndimage

from plugin.core.earthwork.storage import basin_storage
from plugin.core.messages import SurveyError
from plugin.core.surface.locate import heights_at
from tests.core.earthworks import closed, square, surface
from tests.core.surfaces import ORIGIN, delaunay_tin


def pond(notch=None):
    """A pit 20 x 20 at 5 m with sides 1 in 2 up to 10 m in level ground at 10 m, around it a higher rim or a notch."""
    rim, floor = square(40, 10, (20, 20)), square(20, 5, (30, 30))
    ribs = [np.array([a, b]) for a, b in zip(rim, floor)]
    outer = square(80, 12)
    extra = [] if notch is None else [[40.0, 0.0, notch - 0.5], [40.0, 20.0, notch]]
    lines = [closed(rim), closed(floor), *ribs]
    if notch is not None:
        rim = np.insert(rim, 1, [40, 20, notch], axis=0)
        lines = [closed(floor), closed(rim), *ribs, np.array(extra)]
    return surface(np.vstack([outer, rim, floor, *([extra[:1]] if extra else [])]), lines)


def test_square_pit_to_its_rim():
    found = basin_storage(pond(), ORIGIN + 40, steps=70)
    assert found.pit[2] == 5
    assert found.spill[2] == 12
    for stage in found.curve[:51]:
        depth = stage.level - 5
        side = 20 + 4 * depth
        assert stage.volume == pytest.approx(depth / 3 * (400 + side**2 + 20 * side), rel=1e-9, abs=1e-9)
        if depth > 0:
            assert stage.area == pytest.approx(side**2, rel=1e-9)
    assert found.capacity > found.curve[50].volume
    assert found.messages[0].text.code == "earthwork.spills_at_rim"
    assert [s.level for s in found.curve] == sorted(s.level for s in found.curve)


def test_a_notch_sets_the_spill():
    found = basin_storage(pond(notch=8.0), steps=10)
    assert found.spill == pytest.approx([ORIGIN[0] + 40, ORIGIN[1] + 20, 8.0])
    assert found.curve[-1].level == 8.0


def test_a_dam_inside_the_survey():
    """A valley closed by a dam: the spill is the dam's lowest place, with lower ground beyond it."""
    x, y = (v.ravel() for v in np.meshgrid(np.arange(0, 101, 5.0), np.arange(0, 61, 5.0)))
    z = 20 - 0.1 * x + 0.2 * np.abs(y - 30)
    z[x == 70] = np.maximum(z[x == 70], 18 + 0.001 * np.abs(y[x == 70] - 25))
    found = basin_storage(delaunay_tin(np.column_stack([x, y]), z), ORIGIN + np.array([65, 30]))
    assert found.spill == pytest.approx([ORIGIN[0] + 70, ORIGIN[1] + 25, 18.0])
    assert found.pit == pytest.approx([ORIGIN[0] + 65, ORIGIN[1] + 30, 13.5])
    assert found.messages == ()
    assert np.all(np.diff([s.volume for s in found.curve]) > 0)


def hollow_ground(seed, n=900):
    rng = np.random.default_rng(seed)
    t = np.arange(0, 100, 5.0)
    rim = np.concatenate(
        [np.column_stack(c) for c in ((t, 0 * t), (t + 5, 0 * t + 100), (0 * t, t + 5), (0 * t + 100, t))]
    )
    xy = np.vstack([rim, np.round(rng.uniform(2, 98, (n, 2)), 3)])
    centre = rng.uniform(25, 75, (6, 2))
    z = 0.002 * ((xy - 50) ** 2).sum(axis=1)
    for c in centre:
        z -= 2.5 * np.exp(-((xy - c) ** 2).sum(axis=1) / 80)
    return delaunay_tin(xy, z + rng.normal(0, 0.05, len(xy)))


@pytest.mark.parametrize("seed", [1, 2, 3])
def test_pits_that_join_against_a_flooded_grid(seed):
    """Spill level and volumes against scipy's labels of what lies below a level on a fine grid."""
    tin = hollow_ground(seed)
    found = basin_storage(tin, steps=12)
    s = (np.arange(800) + 0.5) / 8
    height = heights_at(tin, np.stack(np.meshgrid(s, s), axis=-1).reshape(-1, 2) + ORIGIN).reshape(800, 800)
    height = np.pad(height, 1, constant_values=np.nan)
    pit = np.floor((found.pit[:2] - ORIGIN) * 8).astype(int) + 1

    def flooded(level):
        label = ndimage.label(np.nan_to_num(height, nan=-np.inf) < level)[0]
        near = label[pit[1] - 1 : pit[1] + 2, pit[0] - 1 : pit[0] + 2]
        return label == near.max()

    spill = found.spill[2]
    outside = np.isnan(height)
    assert not np.any(flooded(spill - 0.1) & outside)
    assert np.any(flooded(spill + 0.1) & outside)
    for stage in found.curve[3:]:
        wet = flooded(stage.level - 1e-9) & ~outside
        if stage.level < spill - 0.1:
            assert stage.volume == pytest.approx(np.sum(stage.level - height[wet]) / 64, rel=0.02)
            assert stage.area == pytest.approx(wet.sum() / 64, rel=0.03)


def test_no_basin():
    hill = surface(np.vstack([square(40, 0), [[20, 20, 9]]]))
    with pytest.raises(SurveyError, match="there is no basin"):
        basin_storage(hill, ORIGIN + 10)
    with pytest.raises(SurveyError, match="outside the surface"):
        basin_storage(hill, ORIGIN - 10)
    with pytest.raises(SurveyError, match="0 steps"):
        basin_storage(hill, steps=0)


def test_national_grid_and_height_shift_do_not_matter():
    tin = hollow_ground(1)
    moved = replace(tin, origin=tin.origin + 1e6, vertices=tin.vertices + np.array([0, 0, 300.0]))
    one, other = basin_storage(tin), basin_storage(moved)
    assert other.capacity == pytest.approx(one.capacity, rel=1e-9)
    assert other.spill - one.spill == pytest.approx([1e6, 1e6, 300])
