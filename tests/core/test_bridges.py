"""Lines with rejected vertices: what is carried across, what ends short, and what of it is told."""

import numpy as np
import pytest

from plugin.core.linework.bridges import bridges_of
from plugin.core.linework.codes import default_code_table
from plugin.core.linework.join import join_lines
from plugin.core.points.pointset import Reason, Status, make_points

TABLE = default_code_table()


def straight(count):
    return np.column_stack([np.arange(count) * 2.0, np.zeros(count), np.arange(count) * 0.1])


def test_a_stretch_inside_runs_straight_between_its_good_ends():
    xyz = straight(7)
    xyz[3, 1] = 0.5  # beside the straight line, and at any height
    xyz[2:4, 2] = 9.0
    (bridge,) = bridges_of(xyz, np.array([1, 1, 0, 0, 1, 1, 1], bool), False)
    assert (bridge.before, bridge.after, bridge.left_out.tolist()) == (1, 4, [2, 3])
    assert bridge.carried
    assert bridge.length == pytest.approx(6.0)
    assert bridge.xyz[:, 1].tolist() == [0, 0, 0, 0]
    assert bridge.xyz[:, 2] == pytest.approx([0.1, 0.2, 0.3, 0.4])


def test_ends_are_short_and_told_so():
    start, end = bridges_of(straight(6), np.array([0, 0, 1, 1, 1, 0], bool), False)
    assert (start.before, start.after, start.length) == (-1, 2, pytest.approx(4.0))
    assert (end.before, end.after, end.length) == (4, -1, pytest.approx(2.0))
    assert not start.carried
    assert not end.carried
    assert np.isnan(start.xyz[:-1, 2]).all()
    assert np.isnan(end.xyz[1:, 2]).all()


def test_a_ring_is_carried_over_its_first_point():
    xyz = np.array([[0, 0, 0], [4, 0, 1], [4, 4, 2], [0, 4, 3.0]])
    (bridge,) = bridges_of(xyz, np.array([0, 1, 1, 1], bool), True)
    assert (bridge.before, bridge.after, bridge.left_out.tolist()) == (3, 1, [0])
    assert bridge.length == pytest.approx(np.hypot(4, 4))
    (bridge,) = bridges_of(np.vstack([xyz, [[-1, 2, 3.0]]]), np.array([0, 1, 1, 1, 0], bool), True)
    assert bridge.left_out.tolist() == [4, 0]


def test_places_that_are_not_known_do_not_hinder():
    xyz = straight(4)
    xyz[1] = np.nan
    (bridge,) = bridges_of(xyz, np.array([1, 0, 1, 1], bool), False)
    assert np.isfinite(bridge.xyz).all()
    assert bridge.length == pytest.approx(4.0)
    xyz = straight(4)
    xyz[3, :2] = np.nan
    (bridge,) = bridges_of(xyz, np.array([1, 1, 1, 0], bool), False)
    assert bridge.length == 0.0


def test_fewer_than_two_good_vertices_make_no_line():
    assert bridges_of(straight(3), np.array([0, 1, 0], bool), False) == ()


def join(codes, rejected, xyz=None):
    xyz = straight(len(codes)) if xyz is None else np.array(xyz, float)
    points = make_points(*xyz.T, code=codes, source_line=np.arange(2, len(codes) + 2))
    status, reasons = np.zeros(len(codes), np.uint8), np.zeros(len(codes), np.uint32)
    status[rejected], reasons[rejected] = Status.REJECTED, Reason.OFF_LINE
    return join_lines(points.with_status(status, reasons), TABLE)


def said(work):
    return [each for each in work.messages if each.text.code.startswith(("linework.carried", "linework.short"))]


def test_lines_from_codes_tell_their_bridges():
    codes = ["KT 1 BEGIN", *["KT 1"] * 6, "KT 1 END"]
    work = join(codes, [0, 3, 4, 7])
    (line,) = work.constraints.lines
    assert line.points.tolist() == [1, 2, 5, 6]
    assert line.bridged == pytest.approx(6.0)
    assert [str(each) for each in said(work)] == [
        "KT 1: 2.0 m shorter at its start, it begins at line 3; points left out there: 1, first - (line 2). Walk it "
        "again.",
        "KT 1: carried straight across 6.0 m between lines 4 and 7; points left out there: 2, first - (line 5). Walk "
        "it again.",
        "KT 1: 2.0 m shorter at its end, it ends at line 8; points left out there: 1, first - (line 9). Walk it again.",
    ]


def test_interleaved_lines_keep_their_own_bridges():
    work = join(["KT 1", "KF 2", "KT 1", "KF 2", "KT 1", "KF 2"], [2])
    assert {line.label: [b.left_out.tolist() for b in line.bridges] for line in work.constraints.lines} == {
        "KT 1": [[2]], "KF 2": [],
    }  # fmt: skip


def test_a_rejected_close_still_closes():
    xyz = [[0, 0, 0], [4, 0, 0], [6, 2, 0], [4, 4, 0], [0, 4, 0]]
    work = join(["BD 1", "BD 1", "BD 1", "BD 1", "BD 1 CLOSE"], [4], xyz)
    (line,) = work.constraints.lines
    assert line.closed
    assert line.points.tolist() == [0, 1, 2, 3]
    assert line.bridged == pytest.approx(np.hypot(4, 4))


@pytest.mark.parametrize("rejected", [1, 3])
def test_no_arc_is_drawn_through_the_wrong_points(rejected):
    xyz = [[-20, 0, 1], [-10, 0, 2], [0, 10, 3], [10, 0, 5], [20, 0, 5]]
    work = join(["KT 1", "KT 1", "KT 1 ARC", "KT 1", "KT 1"], [rejected], xyz)
    (line,) = work.constraints.lines
    assert (line.points >= 0).all()
    assert "linework.arc_broken" in [each.text.code for each in work.messages]
