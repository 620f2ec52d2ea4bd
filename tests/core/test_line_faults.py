"""Lifts on coded lines are found, what the ground does is let be, and the lines stay whole.

Streets made here, by another hand than the simulator's: level ground with a fall along it, kerbs of one height, a ditch
that falls, a wall. The true answer is known by construction.
"""

import numpy as np
import pytest

from plugin.core.linework.codes import default_code_table
from plugin.core.linework.join import join_lines
from plugin.core.points.pointset import Status, make_points
from plugin.core.quality.check import check_survey
from plugin.core.quality.coverage import coverage
from plugin.core.surface.ask import ask_surface
from plugin.core.surface.build import build_surface

NOISE = 0.008
RISE = 0.12
TABLE = default_code_table()


def ground(u, v, drive=None):
    """Kerb at v = 0: street below, verge RISE above; lowered to 3 cm at ``drive``, with ramps of 0.5 m along the kerb
    and one of 1.5 m behind it; a ditch at v = 5 that falls.
    """
    rise = np.full(np.shape(u), RISE)
    if drive is not None:
        lowered = np.clip((2.5 - np.abs(u - drive)) / 0.5, 0, 1) * np.clip((1.6 - v) / 1.5, 0, 1)
        rise = rise - (RISE - 0.03) * lowered
    z = 100 + 0.02 * u + np.where(v > 0.02, rise, -0.02 * np.abs(v))
    ditch = np.clip(0.5 + 0.01 * u - np.maximum(np.abs(v - 5) - 0.2, 0) / 2, 0, None)
    return z - ditch


class Street:
    """A street 60 m long: kerb foot, kerb top and ditch bottom coded every ``apart`` m, passes over and along it."""

    def __init__(self, seed=0, apart=0.5, drive=None, passes=3.0, sides=(-4.0, 8.0), wall=False):
        random = np.random.default_rng(seed)
        self.code, self.uv, self.z = [], [], []
        for number, (code, v) in enumerate((("KF", -0.05), ("KT", 0.1), ("DB", 5.0))):
            u = np.arange(0.2, 60, apart)
            words = [f"{code} {number} BEGIN", *[f"{code} {number}"] * (len(u) - 2), f"{code} {number} END"]
            self.put(words, u, np.full(len(u), v), ground(u, np.full(len(u), v), drive))
        if wall:
            u = np.arange(0.2, 60, apart)
            top = ground(u, np.full(len(u), 2.5)) + 0.9 - np.where(np.abs(u - 30) < 3, 0.3, 0)
            self.put(["KT 9"] * len(u), u, np.full(len(u), 2.5), top)
        for k, u in enumerate(np.arange(0.7, 60, passes)):
            v = np.arange(*sides, 0.55)[:: -1 if k % 2 else 1]
            self.put(["GR"] * len(v), np.full(len(v), u), v, ground(np.full(len(v), u), v, drive))
        for k, v in enumerate((-2.6, 1.2, 3.1)):
            if sides[0] < v < sides[1]:
                u = np.arange(0, 60, 0.5)[:: -1 if k % 2 else 1]
                self.put(["GR"] * len(u), u, np.full(len(u), v), ground(u, np.full(len(u), v), drive))
        self.code, self.uv, self.z = np.array(self.code, object), np.vstack(self.uv), np.concatenate(self.z)
        self.z = self.z + random.normal(0, NOISE, len(self.z))

    def put(self, codes, u, v, z):
        self.code += list(codes)
        self.uv.append(np.column_stack([u, v]))
        self.z.append(z)

    def line(self, code):
        return np.flatnonzero([each.startswith(code) for each in self.code])

    def lift(self, code, first, count, size):
        run = self.line(code)[first:][:count]
        self.z[run] += size
        return run

    def points(self):
        east, north = 500_000 + self.uv[:, 0], 5_700_000 + self.uv[:, 1]
        lines = np.arange(2, len(self.z) + 2)
        return make_points(east, north, self.z, code=self.code, source_line=lines, source="street.csv")

    def check(self):
        return check_survey(self.points(), TABLE)


def marked(check, street):
    """Coded points rejected, and flagged."""
    coded = np.array([each != "GR" for each in street.code])
    return [np.flatnonzero(coded & (check.points.status == status)) for status in (Status.REJECTED, Status.FLAGGED)]


@pytest.mark.parametrize("code", ["KF", "KT", "DB"])
@pytest.mark.parametrize(("first", "count"), [(40, 1), (50, 6), (60, 25), (-7, 7), (0, 9)])
def test_a_lift_on_a_dense_line_is_rejected_and_nothing_else(code, first, count):
    street = Street(seed=first + count + 100)
    run = street.lift(code, first, count, 0.2)
    rejected, flagged = marked(street.check(), street)
    assert np.isin(run, rejected).mean() >= 0.85
    assert len(np.setdiff1d(rejected, run)) == 0
    assert len(np.setdiff1d(flagged, run)) == 0


@pytest.mark.parametrize("size", [-0.15, 0.1, 0.45, 1.2])
@pytest.mark.parametrize("code", ["KF", "KT", "DB"])
def test_lifts_of_any_size_on_a_line_with_a_point_each_three_metres(code, size):
    street = Street(seed=3, apart=3.0)
    run = street.lift(code, 8, 5, size)
    rejected, flagged = marked(street.check(), street)
    assert np.isin(run, np.append(rejected, flagged)).all()
    assert len(np.setdiff1d(rejected, run)) == 0


@pytest.mark.parametrize("apart", [0.5, 1.0, 2.5])
@pytest.mark.parametrize("seed", range(4))
def test_a_clean_street_with_a_drive_keeps_its_kerbs(apart, seed):
    street = Street(seed=seed, apart=apart, drive=21.0 + 3 * seed)
    rejected, flagged = marked(street.check(), street)
    assert len(rejected) == 0
    assert len(flagged) <= max(2, 5 / apart)  # no more than the drive's own, which may be looked at


@pytest.mark.parametrize("sides", [(-4.0, 0.5), (0.3, 8.0)])
def test_a_drive_where_only_one_side_was_walked(sides):
    street = Street(seed=5, drive=30.0, sides=sides)
    rejected, _ = marked(street.check(), street)
    assert len(rejected) == 0


def test_a_wall_whose_top_steps_is_no_lift():
    street = Street(seed=6, wall=True)
    rejected, _ = marked(street.check(), street)
    assert len(rejected) == 0


def test_a_line_nobody_passed_is_held_to_itself():
    u = np.arange(0, 40, 1.0)
    z = 100 + 0.03 * u + np.random.default_rng(1).normal(0, NOISE, 40)
    z[20] += 0.5
    z[30:33] += 0.2
    points = make_points(u, np.zeros(40), z, code=["KT 1"] * 40, source_line=np.arange(2, 42))
    status = check_survey(points, TABLE).points.status
    assert np.flatnonzero(status == Status.REJECTED).tolist() == [20]
    assert np.flatnonzero(status == Status.FLAGGED).tolist() == [30, 31, 32]


def test_a_ramp_is_no_lift():
    street = Street(seed=8)
    line = street.line("DB")
    street.z[line] += np.interp(street.uv[line, 0], [20, 26, 34, 40], [0, 0.3, 0.3, 0])  # unlike the passes beside
    rejected, _ = marked(street.check(), street)
    assert len(rejected) == 0


def test_short_lines_are_checked_and_shorter_ones_let_be():
    for count, caught in ((5, True), (4, False)):
        street = Street(seed=9)
        u = np.arange(count) * 1.5 + 20
        z = ground(u, np.full(count, -1.5))
        z[2] += 0.4
        extra = Street.__new__(Street)
        extra.code = np.append([f"KT 7{' BEGIN' if k == 0 else ''}" for k in range(count)], street.code)
        extra.uv = np.vstack([np.column_stack([u, np.full(count, -1.5)]), street.uv])
        extra.z = np.append(z, street.z)
        status = extra.check().points.status
        assert (status[2] == Status.REJECTED) == caught
        assert (np.delete(status[:count], 2) == Status.USED).all()


def test_no_dam_is_left_where_points_of_the_ditch_are_rejected():
    street = Street(seed=10)
    run = street.lift("DB", 40, 9, 0.45)
    check = street.check()
    work = join_lines(check.points, TABLE)
    (line,) = [each for each in work.constraints.lines if each.label.startswith("DB")]
    (bridge,) = line.bridges
    assert bridge.carried
    assert np.isin(run, bridge.left_out).all()
    ends = street.uv[[bridge.before, bridge.after], 0]
    assert bridge.length == pytest.approx(abs(np.diff(ends)[0]), abs=0.05)
    tin = build_surface(work.points, work.constraints).tin
    u = street.uv[run, 0]
    places = np.column_stack([500_000 + u, np.full(len(u), 5_700_005.0)])
    heights = ask_surface(tin, places).height
    assert np.abs(heights - ground(u, np.full(len(u), 5.0))).max() < 0.04
    again = coverage(tin, work.points, constraints=work.constraints).walk_again
    on_line = again.extra["line"] == line.label
    assert on_line.any()
    assert again.easting[on_line].min() > 500_000 + ends.min()
    assert again.easting[on_line].max() < 500_000 + ends.max()
