"""Lines from field codes: joining, words, what cannot be joined, and that nothing goes unreported."""

from __future__ import annotations

import random
from collections import Counter
from typing import Dict, List, Sequence

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from plugin.core.linework.codes import CodeKind, CodeRow, CodeTable, default_code_table
from plugin.core.linework.constraints import LineKind
from plugin.core.linework.convention import FieldConvention
from plugin.core.linework.join import Linework, PointRole, join_lines
from plugin.core.messages import SurveyError
from plugin.core.points.pointset import PointSet, Reason, Status, make_points

TABLE = default_code_table()


def survey(codes: Sequence[str], xyz=None, rejected: Dict[int, Reason] = {}, extra=None) -> PointSet:  # noqa: B006
    """Points named P0, P1, ... on a curve without repeated places, in file lines from 2 on."""
    n = len(codes)
    if xyz is None:
        k = np.arange(n)
        xyz = np.column_stack([500_000 + 3.0 * k, 4_000_000 + 0.5 * k**2, 90 + 0.1 * k])
    status, reasons = np.zeros(n, np.uint8), np.zeros(n, np.uint32)
    for index, reason in rejected.items():
        status[index], reasons[index] = Status.REJECTED, reason
    return make_points(
        *np.asarray(xyz, float).T.reshape(3, n),
        code=np.array(list(codes), dtype=object),
        name=np.array([f"P{i}" for i in range(n)], dtype=object),
        source_line=np.arange(2, n + 2),
        status=status,
        reasons=reasons,
        extra={key: np.array(values, dtype=object) for key, values in (extra or {}).items()},
    )


def join(codes, convention=None, table=TABLE, **kwargs) -> Linework:
    return join_lines(survey(codes, **kwargs), table, convention or FieldConvention())


def lines(work: Linework) -> Dict[str, List[int]]:
    return {line.label: line.points.tolist() for line in work.constraints.lines}


def codes_of(work: Linework) -> List[str]:
    return [each.text.code for each in work.messages]


def only(work: Linework, code: str):
    found = [each for each in work.messages if each.text.code == code]
    assert len(found) == 1, [str(each) for each in work.messages]
    return found[0]


# --- joining ------------------------------------------------------------------------------------


def test_interleaved_lines_in_recording_order():
    work = join(["KT 1 BEGIN", "KF 1", "GR", "KT 1", "KF1", "KT 2", "KT 1 END", "", "KF 1 END", "KT 2"])
    assert lines(work) == {"KT 1": [0, 3, 6], "KF 1": [1, 4, 8], "KT 2": [5, 9]}
    assert work.line_layers == ("Kerb top", "Kerb foot", "Kerb top")
    assert work.point_layers.tolist()[:4] == ["Kerb top", "Kerb foot", "Ground", "Kerb top"]
    assert work.point_layers[7] == ""
    assert all(line.kind is LineKind.BREAKLINE for line in work.constraints.lines)
    assert np.array_equal(work.constraints.lines[0].xyz[:, 0], work.points.easting[[0, 3, 6]])
    assert [(end.label, end.first, end.last) for end in work.open_ends] == [("KT 2", 5, 9)]
    assert codes_of(work) == ["linework.no_end"]


@pytest.mark.parametrize("text", ["KT 1", "kt1", "KT1", " KT  01 ", "Kt 1"])
def test_spellings_of_one_line(text):
    assert lines(join(["KT 1 BEGIN", text, "end KT 1"])) == {"KT 1": [0, 1, 2]}


def test_line_number_may_be_missing():
    assert lines(join(["BL BEGIN", "BL", "BL END", "BL 1", "BL 1 END"])) == {"BL": [0, 1, 2], "BL 1": [3, 4]}


def test_a_code_that_ends_in_a_digit_comes_before_code_and_number():
    table = CodeTable((CodeRow("W", CodeKind.BREAKLINE), CodeRow("W2", CodeKind.BREAKLINE)))
    work = join(["W2", "W2", "W3", "W 3", "W2 1", "W2 1"], table=table)
    assert lines(work) == {"W2": [0, 1], "W 3": [2, 3], "W2 1": [4, 5]}


def test_boundary_and_void_are_rings_and_close_repeats_the_first_vertex_of_a_breakline():
    work = join(["BD 1", "BD 1", "BD 1 CLOSE", "VD 1", "VD 1", "VD 1 END", "BL 1", "BL 1", "BL 1 CLOSE"])
    assert lines(work) == {"BD 1": [0, 1, 2], "VD 1": [3, 4, 5], "BL 1": [6, 7, 8, 6]}
    assert [line.kind for line in work.constraints.lines] == [LineKind.BOUNDARY, LineKind.VOID, LineKind.BREAKLINE]
    assert np.array_equal(work.constraints.lines[2].xyz[0], work.constraints.lines[2].xyz[-1])
    assert work.messages == ()
    assert work.open_ends == ()


def test_table_can_close_the_lines_of_a_code():
    table = CodeTable((CodeRow("PL", CodeKind.BREAKLINE, "Plinth", close=True),))
    assert lines(join(["PL 1", "PL 1", "PL 1 END"], table=table)) == {"PL 1": [0, 1, 2, 0]}


def test_several_codes_on_one_point_join_every_line():
    work = join(["KT 1 BEGIN", "KT 1 / LE 2 BEGIN", "KT 1 END / LE 2", "LE 2 END/BD 1", "BD 1", "BD 1 CLOSE"])
    assert lines(work) == {"KT 1": [0, 1, 2], "LE 2": [1, 2, 3], "BD 1": [3, 4, 5]}
    assert work.messages == ()


def test_another_separator_and_other_words():
    convention = FieldConvention(begin="S", end="E", close="C", arc="", separator="+")
    work = join(["kt 1 s", "KT 1+LE 1 S", "KT 1 E + LE 1", "LE 1 e", "KT 1 ARC"], convention)
    assert lines(work) == {"KT 1": [0, 1, 2], "LE 1": [1, 2, 3]}
    assert only(work, "linework.strange_word").values["word"] == "ARC"


def test_pattern():
    convention = FieldConvention(pattern=r"(?P<line>\d+)\.(?P<code>[A-Z]+)(?:-(?P<words>\w+))?")
    work = join(["7.KT-BEGIN", "7.kt", "07.KT END", "KT 7"], convention)
    assert lines(work) == {"KT 7": [0, 1, 2]}
    assert only(work, "linework.unknown_code").values["code"] == "KT 7"


def test_columns_for_number_and_words():
    extra = {"string": ["1", "2", "1.0", "1/2", "01", "2"], "what": ["BEGIN", "begin", "", "", "END", "END"]}
    convention = FieldConvention(line_column="string", word_column="what")
    work = join(["KT", "KF", "KT", "KT/KF", "KT", "KF"], convention, extra=extra)
    assert lines(work) == {"KT 1": [0, 2, 3, 4], "KF 2": [1, 3, 5]}
    assert work.messages == ()


def test_columns_that_do_not_fit_the_codes_are_reported():
    extra = {"string": ["1", "1", "1/2/3", "1"]}
    work = join(["KT", "KT", "KT/KF", "KT END"], FieldConvention(line_column="string"), extra=extra)
    assert lines(work) == {"KT 1": [0, 1, 3]}
    assert only(work, "linework.column_mismatch").values["indices"].tolist() == [2]
    assert work.roles[2] == PointRole.NOT_JOINED


# --- words that do not fit ----------------------------------------------------------------------


def test_begin_on_a_running_line_ends_it():
    work = join(["KT 1 BEGIN", "KT 1", "KT 1 BEGIN", "KT 1", "KT 1 END"])
    assert lines(work) == {"KT 1": [0, 1], "KT 1 (2)": [2, 3, 4]}
    text = str(only(work, "linework.began_anew"))
    assert "P2 (line 4)" in text
    assert "P1 (line 3)" in text


def test_a_line_that_goes_on_after_its_end_is_reported():
    work = join(["KT 1", "KT 1 END", "KT 1", "KT 1 END"])
    assert lines(work) == {"KT 1": [0, 1], "KT 1 (2)": [2, 3]}
    assert "P2 (line 4)" in str(only(work, "linework.reopened"))


def test_single_points_are_reported_and_stay_ground():
    work = join(["KT 1", "GR", "KF 2 END"])
    assert len(work.constraints) == 0
    assert [str(each)[:4] for each in work.messages] == ["KT 1", "KF 2"]
    assert codes_of(work) == ["linework.single_point"] * 2
    assert work.points.used.all()
    assert work.roles.tolist() == [PointRole.NOT_JOINED, PointRole.GROUND, PointRole.NOT_JOINED]


@pytest.mark.parametrize("code", ["BD", "VD"])
def test_rings_need_three_places_and_some_area(code):
    work = join([f"{code} 1", f"{code} 1 CLOSE"])
    assert len(work.constraints) == 0
    assert only(work, "linework.ring_too_short").values["places"] == 2
    xyz = [[0, 0, 1], [5, 5, 1], [2, 2, 1]]
    work = join([f"{code} 1"] * 3, xyz=xyz)
    assert len(work.constraints) == 0
    assert only(work, "linework.ring_flat").values["count"] == 3
    there_and_back = [[0, 0, 1], [5, 5, 1], [0, 0, 1], [5, 5, 1]]
    work = join([f"{code} 1"] * 4, xyz=there_and_back)
    assert only(work, "linework.ring_too_short").values["places"] == 2


def test_a_breakline_of_two_points_cannot_close():
    work = join(["KT 1", "KT 1 CLOSE"])
    assert lines(work) == {"KT 1": [0, 1]}
    assert "P1 (line 3)" in str(only(work, "linework.cannot_close"))


def test_repeated_places_are_dropped_with_a_note():
    xyz = [[0, 0, 1], [0, 0, 1.3], [0.00005, 0, 1], [4, 0, 1], [4, 3, 1], [0, 0, 1]]
    work = join(["KT 1"] * 5 + ["KT 1 CLOSE"], xyz=xyz)
    assert lines(work) == {"KT 1": [0, 3, 4, 0]}
    assert only(work, "linework.same_place").values["indices"].tolist() == [1, 2, 5]


def test_words_where_no_line_is():
    work = join(["GR BEGIN", "TR oak", "XX 3 END", "BEGIN", "KT 1", "KT 1 BEGINN"])
    words = {each.values["word"]: each for each in work.messages if each.text.code == "linework.word_without_line"}
    assert words["begin"].values["indices"].tolist() == [0, 3]
    assert words["end"].values["indices"].tolist() == [2]
    assert only(work, "linework.strange_word").values["word"] == "BEGINN"
    assert only(work, "linework.unknown_code").values["code"] == "XX"


def test_unknown_codes_are_ground_and_counted():
    work = join(["GR", "XX", "YY 2", "XX 3", "XX"])
    counted = {
        each.values["code"]: (each.values["count"], each.values["line"])
        for each in work.messages
        if each.text.code == "linework.unknown_code"
    }
    assert counted == {"XX": (3, 3), "YY": (1, 4)}
    assert (work.roles == PointRole.GROUND).all()
    assert work.points.used.all()


# --- status -------------------------------------------------------------------------------------


def test_points_off_the_ground_and_check_shots_are_rejected_unless_they_were():
    before = survey(["GR", "TR 4", "CK", "MH", "TR", "KT 1 / TR", "KT 1 / CK", "KT 1"], rejected={4: Reason.TILT})
    work = join_lines(before, TABLE)
    assert work.points.status.tolist() == [0, 2, 2, 2, 2, 0, 2, 0]
    assert work.points.reasons.tolist() == [
        0, Reason.NOT_GROUND, Reason.CHECK_SHOT, Reason.NOT_GROUND, Reason.TILT, 0, Reason.CHECK_SHOT, 0
    ]  # fmt: skip
    assert lines(work) == {"KT 1": [5, 7]}
    assert only(work, "linework.not_ground").values["indices"].tolist() == [1, 3]
    assert only(work, "linework.check_shots").values["indices"].tolist() == [2, 6]
    assert before.status.tolist() == [0, 0, 0, 0, 2, 0, 0, 0]
    assert work.counts == {
        PointRole.GROUND: 1, PointRole.ON_LINE: 2, PointRole.NOT_GROUND: 2, PointRole.CHECK_SHOT: 2,
        PointRole.REJECTED: 1, PointRole.NOT_JOINED: 0,
    }  # fmt: skip


def test_a_flagged_point_keeps_its_reasons():
    points = survey(["CK"])
    points = points.with_status(np.array([Status.FLAGGED]), np.array([Reason.POLE_HEIGHT]))
    work = join_lines(points, TABLE)
    assert work.points.status.tolist() == [Status.REJECTED]
    assert work.points.reasons.tolist() == [Reason.CHECK_SHOT | Reason.POLE_HEIGHT]


def test_rejected_points_are_skipped_but_their_words_hold():
    codes = ["KT 1", "KT 1", "KT 1 BEGIN", "KT 1", "KT 1", "KT 1 END", "KT 1", "KT 1"]
    work = join(codes, rejected={2: Reason.POLE_HEIGHT, 5: Reason.BY_HAND})
    assert lines(work) == {"KT 1": [0, 1], "KT 1 (2)": [3, 4], "KT 1 (3)": [6, 7]}
    skipped = [each for each in work.messages if each.text.code == "linework.rejected_skipped"]
    assert [each.values["indices"].tolist() for each in skipped] == [[2, 5]]


def test_words_of_repeated_records_do_not_count():
    codes = ["KT 1 BEGIN", "KT 1", "KT 1 BEGIN", "KT 1", "KT 1", "KT 1 END"]
    work = join(codes, rejected={2: Reason.DUPLICATE, 3: Reason.DUPLICATE})
    assert lines(work) == {"KT 1": [0, 1, 4, 5]}
    assert only(work, "linework.duplicates_skipped").values["count"] == 2


def test_lines_of_rejected_points_only():
    work = join(["KT 1", "KT 1 END"], rejected={0: Reason.NO_FIX, 1: Reason.NO_FIX})
    assert len(work.constraints) == 0
    assert codes_of(work) == ["linework.rejected_skipped", "linework.nothing_left"]


def test_points_without_a_position_are_left_out():
    xyz = [[0, 0, 1], [1, np.nan, 1], [2, 0, np.inf], [3, 0, 1]]
    work = join(["KT 1"] * 4, xyz=xyz)
    assert lines(work) == {"KT 1": [0, 3]}
    assert only(work, "linework.no_position").values["indices"].tolist() == [1, 2]


# --- arcs ---------------------------------------------------------------------------------------


def test_arc_on_a_line():
    xyz = [[-20, 0, 1], [-10, 0, 2], [0, 10, 3], [10, 0, 5], [20, 0, 5]]
    work = join(["KT 1 BEGIN", "KT 1", "KT 1 ARC", "KT 1", "KT 1 END"], FieldConvention(arc_tolerance=0.005), xyz=xyz)
    (line,) = work.constraints.lines
    assert line.points[line.points >= 0].tolist() == [0, 1, 2, 3, 4]
    inserted = line.xyz[line.points < 0]
    assert np.allclose(np.hypot(inserted[:, 0], inserted[:, 1]), 10)
    assert inserted[:, 1].min() > 0
    assert work.roles.tolist() == [PointRole.ON_LINE] * 5


@pytest.mark.parametrize(
    ("codes", "rejected", "expected"),
    [
        (["KT 1 ARC", "KT 1", "KT 1"], {}, "linework.arc_at_end"),
        (["KT 1", "KT 1", "KT 1 ARC END"], {}, "linework.arc_at_end"),
        (["KT 1", "KT 1 ARC", "KT 1"], {1: Reason.TILT}, "linework.arc_rejected"),
    ],
)
def test_arcs_that_cannot_be(codes, rejected, expected):
    work = join(codes, rejected=rejected)
    assert expected in codes_of(work)
    assert (work.constraints.lines[0].points >= 0).all()


def test_a_mark_on_a_dropped_point_moves_to_the_point_kept():
    xyz = [[-10, 0, 2], [0, 10, 3], [0, 10, 3], [10, 0, 5]]
    work = join(["KT 1", "KT 1", "KT 1 ARC", "KT 1"], xyz=xyz)
    assert (work.constraints.lines[0].points == -1).any()


def test_a_ring_of_arcs_runs_round():
    xyz = [[-10, 0, 2], [0, 10, 3], [10, 0, 5], [0, -10, 4]]
    work = join(["BD 1", "BD 1 ARC", "BD 1", "BD 1 ARC CLOSE"], xyz=xyz)
    (line,) = work.constraints.lines
    assert np.allclose(np.hypot(line.xyz[:, 0], line.xyz[:, 1]), 10)
    assert line.points[-1] == -1


# --- settings that cannot work ------------------------------------------------------------------


@pytest.mark.parametrize(
    ("settings", "code"),
    [
        ({"begin": "X", "end": "x"}, "linework.word_twice"),
        ({"begin": "A LINE"}, "linework.word_broken"),
        ({"begin": "A/B"}, "linework.word_broken"),
        ({"pattern": "("}, "linework.bad_pattern"),
        ({"pattern": r"\w+"}, "linework.no_code_group"),
        ({"arc_tolerance": 0.0}, "linework.bad_tolerance"),
        ({"arc_tolerance": float("nan")}, "linework.bad_tolerance"),
    ],
)
def test_conventions_that_cannot_work(settings, code):
    with pytest.raises(SurveyError) as caught:
        FieldConvention(**settings)
    assert caught.value.code == code


@pytest.mark.parametrize(("name", "code"), [("END", "code_is_word"), ("A B", "code_broken"), ("A/B", "code_broken")])
def test_codes_that_could_never_be_found(name, code):
    with pytest.raises(SurveyError) as caught:
        join(["GR"], table=CodeTable((CodeRow(name, CodeKind.GROUND),), "our.csv"))
    assert caught.value.code == f"linework.{code}"
    assert "our.csv" in str(caught.value)


def test_a_missing_column_is_named():
    with pytest.raises(SurveyError, match="string"):
        join(["KT"], FieldConvention(line_column="string"), extra={"remark": ["x"]})


def test_no_points():
    work = join([])
    assert len(work.points) == len(work.constraints) == len(work.messages) == 0


# --- what must always hold ----------------------------------------------------------------------

words = st.sampled_from(["", "", "", "", " BEGIN", " END", " CLOSE", " ARC", " OOPS", " ARC END"])
items = st.builds(
    lambda code, number, word: f"{code} {number}{word}",
    st.sampled_from(["KT", "KF", "BD", "VD", "LE", "GR", "TR", "CK", "XX", ""]),
    st.sampled_from(["", "1", "2"]),
    words,
)
descriptions = st.builds("/".join, st.lists(items, min_size=1, max_size=2))
places = st.tuples(st.integers(0, 4), st.integers(0, 4), st.integers(0, 3))


@given(
    rows=st.lists(st.tuples(descriptions, places, st.sampled_from([0, 0, 0, 0, 1, 2, 256])), max_size=30),
)
def test_every_point_is_on_a_line_or_ground_or_reported(rows):
    codes = [row[0] for row in rows]
    rejected = {index: Reason(row[2]) for index, row in enumerate(rows) if row[2]}
    points = survey(codes, xyz=np.array([row[1] for row in rows], float).reshape(-1, 3), rejected=rejected)
    work = join_lines(points, TABLE)
    for each in work.messages:
        assert "{" not in str(each)
        if len(rows):
            assert f"line {each.values['line']}" in str(each) or each.text.code in {"linework.unknown_code"}
            assert each.values["point"] in str(each)
    assert sum(work.counts.values()) == len(points)
    on_lines = {int(i) for line in work.constraints.lines for i in line.points if i >= 0}
    assert on_lines == set(np.flatnonzero(work.roles == PointRole.ON_LINE).tolist())
    unjoined = {
        "linework.single_point", "linework.same_place", "linework.ring_too_short", "linework.ring_flat",
        "linework.no_position", "linework.column_mismatch",
    }  # fmt: skip
    reported = {int(i) for each in work.messages if each.text.code in unjoined for i in each.values["indices"]}
    assert set(np.flatnonzero(work.roles == PointRole.NOT_JOINED).tolist()) <= reported
    for line in work.constraints.lines:
        assert len(line.xyz) == len(line.points) >= (3 if line.closed else 2)
        assert (np.hypot(*np.diff(line.xyz[:, :2], axis=0).T) > 0).all()
        own = line.points >= 0
        assert np.array_equal(
            line.xyz[own], np.column_stack([points.easting, points.northing, points.height])[line.points[own]]
        )
        assert work.points.used[line.points[own]].all()
    # a ground point has no line code; a used point with one is joined or reported
    for index, code in enumerate(codes):
        has_line = any(
            item.split()[:1] and item.split()[0] in ("KT", "KF", "BD", "VD", "LE") for item in code.split("/")
        )
        if work.points.used[index]:
            assert (work.roles[index] != PointRole.GROUND) == has_line


@given(
    lists=st.lists(
        st.lists(st.tuples(words, st.integers(0, 20), st.integers(0, 20)), min_size=1, max_size=8),
        min_size=1,
        max_size=5,
    ),
    seed=st.integers(0, 10**6),
)
def test_interleaving_never_changes_the_lines(lists, seed):
    """Each list is all that is recorded for one line; shuffled together in any way they give the same lines."""
    kinds = ["KT 1", "KT 2", "KF 1", "BD 1", "VD 7"]
    strands = [[(kind + word, (x, y, 1.0 * x)) for word, x, y in strand] for kind, strand in zip(kinds, lists)]
    after_each_other = [row for strand in strands for row in strand]
    turns = [number for number, strand in enumerate(strands) for _ in strand]
    random.Random(seed).shuffle(turns)
    left = [iter(strand) for strand in strands]
    mixed = [row for number in turns for row in (next(left[number]), ("GR", (50, 50, 0.0)))]

    def formed(rows):
        points = survey([row[0] for row in rows], xyz=[row[1] for row in rows])
        work = join_lines(points, TABLE)
        lines = {line.label: (line.kind, line.xyz.tolist()) for line in work.constraints.lines}
        said = Counter(
            (each.text.code, each.values.get("label")) for each in work.messages if each.text.code not in once
        )
        return lines, said

    once = {"linework.no_end", "linework.strange_word"}  # one message for the whole survey
    assert formed(after_each_other) == formed(mixed)
