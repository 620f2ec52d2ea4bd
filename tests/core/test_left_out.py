"""Which flagged stretches are left out of the surface, and how they are put back."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Tuple

import numpy as np
import pytest

from plugin.core.arguments.parser import make_parser
from plugin.core.arguments.settings import job_settings
from plugin.core.points.decisions import Decisions
from plugin.core.points.pointset import PointSet, Reason, Status, make_points
from plugin.core.quality import walk_check
from plugin.core.quality.check import check_survey
from plugin.core.quality.claims import rejected_runs
from plugin.core.quality.coverage import coverage
from plugin.core.quality.left_out import LONG, left_out
from plugin.core.quality.noise import Roughness
from plugin.core.quality.overrides import with_overrides
from plugin.core.quality.stretches import Scale
from plugin.core.quality.suspects import Suspects
from plugin.core.quality.walk import Walk, make_walk
from plugin.core.surface.build import build_surface

SIZE, STEP = 0.1, 0.5


def crossed(
    crossings: Tuple[float, ...], length: float = 15.0, ground: Tuple[float, ...] = ()
) -> Tuple[Walk, np.ndarray]:
    """A pass 40 m long whose middle ``length`` (m) is off, and cross passes at places (m) on it: on the level ground,
    those of ``ground`` at the height of what seems off. Also the mask of the points that are off."""
    x = np.arange(0.0, 40.0, STEP)
    off = np.abs(x - 20.0) <= length / 2
    tracks = [np.column_stack([x, np.zeros(len(x)), np.where(off, SIZE, 0.0)])]
    for place in sorted((*crossings, *ground)):
        y = np.arange(-10.2, 10.2, STEP)
        height = SIZE if place in ground else 0.0
        tracks.append(np.column_stack([np.full(len(y), place + 0.2), y, np.full(len(y), height)]))
    xyz = np.vstack(tracks) + np.array([1.0, 20.0, 0.0])
    walk = make_walk(np.arange(len(xyz)), *xyz.T)
    return walk, np.append(off, np.zeros(len(xyz) - len(off), bool))


def told(walk: Walk, off: np.ndarray, size: float = SIZE) -> np.ndarray:
    """What the rule says of one flagged stretch."""
    level, none = np.where(off, size, 0.0), np.zeros(len(walk), bool)
    group = np.where(off, 0, -1)
    suspects = Suspects(none, off, level, np.full(len(walk), np.nan), group)
    return left_out(walk, suspects, Scale(0.01, 0.006, 4.0, Roughness(np.array([0.0, 1.0]), np.array([0.0, 0.0]))))


def test_a_long_stretch_that_all_who_meet_it_say_is_off_is_left_out() -> None:
    walk, off = crossed((14.0, 19.0, 25.0))
    assert np.array_equal(told(walk, off), off)


@pytest.mark.parametrize(
    ("crossings", "length", "ground"),
    [
        ((), 15.0, ()),  # nobody met it
        ((19.0,), 15.0, ()),  # once
        ((14.0, 25.0), 15.0, (19.0,)),  # one takes it for ground
        ((19.0, 21.0), 15.0, ()),  # both in a small part of it
        ((19.0, 21.0), LONG - 1, ()),  # short
    ],
)
def test_all_others_stay(crossings: Tuple[float, ...], length: float, ground: Tuple[float, ...]) -> None:
    walk, off = crossed(crossings, length, ground)
    assert not told(walk, off).any()


def test_one_that_is_off_by_less_than_its_doubt_stays() -> None:
    walk, off = crossed((14.0, 19.0, 25.0))
    lower = replace(walk, z=walk.z * 0.2)
    assert not told(lower, off, 0.2 * SIZE).any()


def flagged_field(monkeypatch: pytest.MonkeyPatch, keep: bool) -> Tuple[PointSet, np.ndarray]:
    """A field of passes as the check leaves it when its search puts 40 points in doubt and the rule leaves them out."""
    x, y = np.meshgrid(np.arange(0, 40.1, STEP), np.arange(0, 30.1, 3.0))
    x[1::2] = x[1::2, ::-1]
    height = np.random.default_rng(3).normal(0, 0.008, x.size)
    points = make_points(5e5 + x.ravel(), 5.7e6 + y.ravel(), height, source_line=np.arange(x.size) + 2)
    out = np.zeros(x.size, bool)
    out[330:390] = True

    def decided(walk: Walk, suspects: Suspects, *others: object) -> Suspects:
        mask = out[walk.index]
        return replace(
            suspects, doubtful=mask, off=np.zeros(len(walk), bool), level=SIZE * mask, group=np.where(mask, 0, -1)
        )

    monkeypatch.setattr(walk_check, "_decided", decided)
    monkeypatch.setattr(walk_check, "left_out", lambda walk, suspects, *others: suspects.doubtful)
    check = check_survey(points, keep_flagged=keep)
    if not keep:
        assert [one.message.text.code for one in check.findings] == ["quality.left_out"]
        assert check.findings[0].message.values["length"] == pytest.approx(30, abs=4)
    return check.points, out


def test_it_is_flagged_kept_out_told_and_a_place_to_walk_again(monkeypatch: pytest.MonkeyPatch) -> None:
    points, out = flagged_field(monkeypatch, False)
    assert np.all(points.status[out] == Status.FLAGGED)
    assert np.array_equal(points.used, ~out)
    assert np.array_equal(points.left_out, out)
    assert np.all(points.reasons[out] == np.uint32(Reason.DOUBTFUL_HEIGHT | Reason.LEFT_OUT))
    (run,) = rejected_runs(points)
    assert (run.first_line, run.last_line) == (332, 391)
    surface = build_surface(points).tin
    assert len(surface.vertices) == np.count_nonzero(~out)
    found = coverage(surface, points)
    assert "coverage.left_out" in [one.text.code for one in found.messages]
    place = np.column_stack([found.walk_again.easting, found.walk_again.northing])
    away = np.hypot(*(place[:, None] - np.column_stack([points.easting, points.northing])[out]).transpose(2, 0, 1))
    assert away.min() < STEP


def test_one_word_puts_it_back(monkeypatch: pytest.MonkeyPatch) -> None:
    points, out = flagged_field(monkeypatch, True)
    assert points.used.all()
    assert np.all(points.status[out] == Status.FLAGGED)
    assert not (points.reasons & np.uint32(Reason.LEFT_OUT)).any()


def test_the_hand_goes_first(monkeypatch: pytest.MonkeyPatch) -> None:
    points, out = flagged_field(monkeypatch, False)
    lines = points.source_line[out][:10]
    status = np.full(10, Status.USED, np.uint8)
    decisions = Decisions(lines, status, np.full(10, Reason.BY_HAND, np.uint32), np.arange(10) + 2)
    decided, report = with_overrides(points, decisions)
    assert len(report) == 10
    assert np.count_nonzero(~decided.used) == np.count_nonzero(out) - 10


def test_the_option_reaches_the_check(tmp_path: Path) -> None:

    words = ["walk.csv", "--crs", "local", "--interval", "1", "--out", str(tmp_path)]
    assert not job_settings(make_parser().parse_args(words)).keep_flagged
    assert job_settings(make_parser().parse_args([*words, "--keep-flagged"])).keep_flagged
