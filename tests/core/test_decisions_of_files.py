"""Decisions by hand on a survey of several files: a point is named by its file and line."""

import csv

import numpy as np
import pytest

from plugin.core.__main__ import main
from plugin.core.messages import SurveyError
from plugin.core.points.decisions import apply_decisions, locate_decisions, read_decisions
from plugin.core.points.delimited import read_points
from plugin.core.points.merge import merge_files
from plugin.core.points.pointset import Status
from plugin.core.points.table import write_points
from plugin.core.quality.overrides import changed_by_hand, with_overrides, write_decisions

HEADER = "name,easting,northing,height"


def survey(path, *names, more=""):
    rows = [f"{name},{10.0 * i},{5.0 * i * i % 7},1.0" for i, name in enumerate(names)]
    path.parent.mkdir(exist_ok=True)
    path.write_text("\n".join([HEADER + more, *rows]) + "\n", encoding="utf-8")
    return path


def decide(tmp_path, *rows, header="source,line,status,reason"):
    path = tmp_path / "hand.csv"
    path.write_text("\n".join([header, *rows]) + "\n", encoding="utf-8")
    return read_decisions(path)


@pytest.fixture
def merged(tmp_path):
    """Two days; lines 2 to 4 are of both, line 5 of the second alone."""
    files = [survey(tmp_path / "one.csv", "A", "B", "C"), survey(tmp_path / "two.csv", "D", "E", "F", "G")]
    return merge_files([read_points(file) for file in files]).points


def statuses(points):
    return {name: Status(status).name.lower() for name, status in zip(points.name, points.status) if status}


def test_file_and_line_name_a_point(merged, tmp_path):
    hand = decide(tmp_path, "two.csv,2,rejected,", "one.csv,2,flagged,tilt", "one.csv,4,rejected,")
    decided, notes = apply_decisions(merged, hand)
    assert statuses(decided) == {"D": "rejected", "A": "flagged", "C": "rejected"}
    assert notes == ()


def test_folders_may_stand_before_the_name_or_not(merged, tmp_path):
    hand = decide(tmp_path, "day/two.csv,3,rejected,", "C:\\survey\\one.csv,3,rejected,")
    assert statuses(apply_decisions(merged, hand)[0]) == {"E": "rejected", "B": "rejected"}


def test_files_of_one_name_are_told_apart_by_their_folders(tmp_path):
    files = [survey(tmp_path / day / "survey.csv", f"{day}A", f"{day}B") for day in ("mon", "tue")]
    points = merge_files([read_points(file) for file in files]).points
    hand = decide(tmp_path, f"{files[1]},3,rejected,")
    assert statuses(apply_decisions(points, hand)[0]) == {"tueB": "rejected"}
    with pytest.raises(SurveyError) as refused:
        apply_decisions(points, decide(tmp_path, "survey.csv,3,rejected,"))
    assert refused.value.code == "decisions.which_source"
    assert str(files[0]) in str(refused.value)
    assert "line 2" in str(refused.value)


def test_a_line_of_several_files_is_refused(merged, tmp_path):
    with pytest.raises(SurveyError) as refused:
        apply_decisions(merged, decide(tmp_path, "5,used,", "3,rejected,", header="line,status,reason"))
    assert refused.value.code == "decisions.which_file"
    assert "line 3: survey line 3 is a point in several files (one.csv, two.csv)" in str(refused.value)
    assert "'source'" in str(refused.value)


def test_a_line_of_one_file_is_taken_and_told(merged, tmp_path):
    decided, notes = apply_decisions(merged, decide(tmp_path, "5,rejected,", header="line,status,reason"))
    assert statuses(decided) == {"G": "rejected"}
    assert [note.text.code for note in notes] == ["decisions.without_file"]
    assert notes[0].values["count"] == 1
    assert notes[0].values["line"] == 2


def test_what_has_no_effect_is_told(merged, tmp_path):
    hand = decide(tmp_path, "one.csv,5,rejected,", "three.csv,2,rejected,", ",77,rejected,", "two.csv,4,flagged,")
    decided, notes = apply_decisions(merged, hand)
    assert statuses(decided) == {"F": "flagged"}
    assert [note.text.code for note in notes] == [
        "decisions.no_point_of", "decisions.no_file", "decisions.no_point", "decisions.without_file",
    ]  # fmt: skip
    assert "line 5 of one.csv holds no point" in str(notes[0])
    assert "'three.csv' is none of the files of this survey (one.csv, two.csv)" in str(notes[1])


def test_one_point_decided_twice_is_refused(merged, tmp_path):
    for rows in (("one.csv,2,used,", "one.csv,2,rejected,"), ("two.csv,5,used,", "day/two.csv,5,used,"),
                 ("two.csv,5,used,", ",5,rejected,")):  # fmt: skip
        with pytest.raises(SurveyError) as refused:
            apply_decisions(merged, decide(tmp_path, *rows))
        assert refused.value.code == "decisions.decided_twice"
        assert "line 3" in str(refused.value)
    decide(tmp_path, "one.csv,2,used,", "two.csv,2,rejected,")


def test_the_file_may_be_named_where_there_is_one_and_need_not(tmp_path):
    points = read_points(survey(tmp_path / "one.csv", "A", "B", "C")).points
    for row in (
        "one.csv,3,rejected,",
        f"{tmp_path / 'one.csv'},3,rejected,",
        "old/one.csv,3,rejected,",
        ",3,rejected,",
    ):
        decided, notes = apply_decisions(points, decide(tmp_path, row))
        assert statuses(decided) == {"B": "rejected"}
        assert notes == ()
    decided, notes = apply_decisions(points, decide(tmp_path, "other.csv,3,rejected,"))
    assert statuses(decided) == {}
    assert [note.text.code for note in notes] == ["decisions.no_file"]


def test_a_column_of_the_survey_called_source_is_no_hindrance(tmp_path):
    path = tmp_path / "one.csv"
    path.write_text(f"{HEADER},source\nA,0,0,1,base\nB,9,0,1,rover\nC,0,9,1,rover\n", encoding="utf-8")
    points = read_points(path).points
    for hand in (
        decide(tmp_path, "3,rejected,", header="line,status,reason"),
        decide(tmp_path, "one.csv,3,rejected,"),
        decide(tmp_path, "rover,3,rejected,"),
    ):
        decided, notes = apply_decisions(points, hand)
        assert statuses(decided) == {"B": "rejected"}
        assert notes == ()


def test_points_of_one_line_are_refused_too(tmp_path):
    points = read_points(survey(tmp_path / "one.csv", "A", "B")).points.select(np.array([0, 1, 1]))
    with pytest.raises(SurveyError) as refused:
        apply_decisions(points, decide(tmp_path, "3,rejected,", header="line,status,reason"))
    assert refused.value.code == "decisions.which_point"


def test_the_table_of_points_of_several_files_is_a_table_of_decisions(merged, tmp_path):
    chosen = merged.with_status(np.arange(7) % 3, np.where(np.arange(7) % 3, 1, 0))
    write_points(chosen, tmp_path / "points.csv")
    decided, notes = apply_decisions(merged, read_decisions(tmp_path / "points.csv"))
    assert decided.status.tolist() == chosen.status.tolist()
    assert notes == ()


def test_rows_changed_by_hand_keep_their_file(merged, tmp_path):
    checked, _ = with_overrides(merged, decide(tmp_path))
    columns = {
        "line": merged.source_line.tolist(), "status": ["used"] * 7, "reason": [""] * 7,
        **{name: list(checked.extra[name]) for name in ("source", "check_status", "check_reason")},
    }  # fmt: skip
    columns["status"][1] = columns["status"][4] = "rejected"  # line 3 of both files
    hand = changed_by_hand(columns, "layer")
    write_decisions(hand, tmp_path / "hand.csv")
    again = read_decisions(tmp_path / "hand.csv")
    decided, report = with_overrides(merged, again)
    assert statuses(decided) == {"B": "rejected", "E": "rejected"}
    assert [(row["source"], row["line"]) for row in report.rows()] == [("one.csv", 3), ("two.csv", 3)]


def test_a_large_table_is_placed_at_once(tmp_path):
    """As many decisions as points, against a plain look-up."""
    rng = np.random.default_rng(5)
    files = [survey(tmp_path / f"f{i}.csv", *(f"{i}-{k}" for k in range(300))) for i in range(4)]
    points = merge_files([read_points(file) for file in files]).points
    wanted = rng.permutation(len(points))[:700]
    rows = [f"{points.extra['source'][i]},{points.source_line[i]},rejected," for i in wanted]
    assert locate_decisions(points, decide(tmp_path, *rows)).point.tolist() == wanted.tolist()


def test_the_job_takes_decisions_on_two_files(tmp_path, capsys):
    for name, east in (("one", 0.0), ("two", 100.0)):
        rows = [
            f"{name}{i}-{j},{east + 3 * i:.3f},{3 * j + (0.1 if name == 'two' else 0):.3f},{1 + 0.01 * i:.3f}"
            for i in range(6)
            for j in range(6)
        ]
        (tmp_path / f"{name}.csv").write_text("\n".join([HEADER, *rows]) + "\n", encoding="utf-8")
    hand = tmp_path / "hand.csv"
    words = [tmp_path / "one.csv", tmp_path / "two.csv", "--crs", "local", "--interval", "0.1", "--no-codes"]
    words += ["--decisions", hand, "--out", tmp_path / "out"]
    hand.write_text("line,status,reason\n9,rejected,\n", encoding="utf-8")
    assert main([str(word) for word in words]) == 2
    assert "several files (one.csv, two.csv)" in capsys.readouterr().err
    hand.write_text("source,line,status,reason\ntwo.csv,9,rejected,\n", encoding="utf-8")
    assert main([str(word) for word in words]) == 0
    with open(tmp_path / "out" / "points.csv", encoding="utf-8", newline="") as stream:
        rejected = [(row["source"], row["line"]) for row in csv.DictReader(stream) if row["status"] == "rejected"]
    assert rejected == [("two.csv", "9")]
    assert "two.csv: 9" in (tmp_path / "out" / "report.html").read_text(encoding="utf-8")
