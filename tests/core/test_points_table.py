"""Tables of points and rejects, decisions by hand, and files that appear whole or not at all."""

import csv
import os

import numpy as np
import pytest
from pyproj import CRS

from plugin.core.files import replace_file
from plugin.core.messages import SurveyError
from plugin.core.points.decisions import apply_decisions, read_decisions
from plugin.core.points.delimited import read_points
from plugin.core.points.pointset import Reason, Status, make_points
from plugin.core.points.table import write_points, write_rejects

SURVEY = (
    "name,easting,northing,height,code,sigma_h,sigma_v,fix,satellites,pdop,tilt,time,status\n"
    '"#1, a",548240.762,5712395.593,91.060,kerb,0.005,0.007,4,20,1.5,0.2,2025-04-09T07:06:02.500Z,old\n'
    "Ü2,548248.292,5712394.853,-0.001,,,,,,,,,\n"
    "bad,548248.292,5712394.853,none,,,,,,,,,\n"
    '3,1,2,3,"say ""a, b""",,,float,,,,2025-04-09T07:06:03Z,\n'
)


@pytest.fixture
def survey(tmp_path):
    path = tmp_path / "survey.csv"
    path.write_text(SURVEY, encoding="utf-8")
    return path


def same(left, right):
    equal = [a == b or (a != a and b != b) for a, b in zip(left.tolist(), right.tolist())]
    return len(left) == len(right) and all(equal)


@pytest.mark.parametrize("crs", [None, "EPSG:25832", "EPSG:2263", "EPSG:6405", "EPSG:25832+6360"])
def test_written_points_are_read_again_as_they_were(survey, tmp_path, crs):
    crs = None if crs is None else CRS(crs)
    points = read_points(survey, crs=crs).points
    status = np.array([Status.USED, Status.REJECTED, Status.FLAGGED])
    points = points.with_status(status, np.array([0, Reason.TILT | Reason.NO_FIX, Reason.BY_HAND]))
    write_points(points, tmp_path / "points.csv")
    again = read_points(tmp_path / "points.csv", crs=crs)
    assert again.account.rejects == 0
    for column in ("name", "code", "fix", "time", "tilt"):
        assert same(getattr(again.points, column), getattr(points, column)), column
    for column in ("easting", "northing", "height", "sigma_h", "sigma_v"):
        assert np.allclose(getattr(again.points, column), getattr(points, column), rtol=0, atol=1e-6, equal_nan=True)
    assert same(again.points.extra["satellites"], points.extra["satellites"])
    assert same(again.points.extra["status_2"], points.extra["status"])
    assert again.points.extra["line"].tolist() == ["2", "3", "5"]
    assert again.points.extra["status"].tolist() == ["used", "rejected", "flagged"]
    assert again.points.extra["reason"].tolist() == ["", "no_fix+tilt", "by_hand"]


def test_coordinates_are_written_in_units_of_the_crs(tmp_path):
    """EPSG:2263 is in U.S. survey feet of 1200/3937 m (NIST SP 811)."""
    points = make_points([1200.0], [2400.0], [1.2], sigma_h=[0.012], crs=CRS("EPSG:2263"))
    write_points(points, tmp_path / "points.csv")
    with open(tmp_path / "points.csv", encoding="utf-8", newline="") as stream:
        (row,) = csv.DictReader(stream)
    assert (row["easting"], row["northing"], row["height"], row["sigma_h"]) == ("3937", "7874", "3.937", "0.03937")


def test_an_empty_set_is_a_header(tmp_path):
    write_points(make_points([], [], []), tmp_path / "points.csv")
    assert (tmp_path / "points.csv").read_text(encoding="utf-8").startswith("line,name,easting")
    assert (tmp_path / "points.csv").read_text(encoding="utf-8").count("\n") == 1


def test_rejects_as_a_table(survey, tmp_path):
    write_rejects(read_points(survey).rejects, tmp_path / "rejects.csv")
    with open(tmp_path / "rejects.csv", encoding="utf-8", newline="") as stream:
        (row,) = csv.DictReader(stream)
    assert row["line"] == "4"
    assert row["text"] == SURVEY.splitlines()[3]
    assert "height (column 4)" in row["reason"]


def decisions(tmp_path, text):
    path = tmp_path / "decisions.csv"
    path.write_text(text, encoding="utf-8")
    return read_decisions(path)


def test_decisions_change_status_and_drop_nothing(survey, tmp_path):
    points = read_points(survey).points
    taken = decisions(
        tmp_path, "line,status,reason\n# by the office\n5,Rejected,tilt+NO_FIX\n2,flagged,\n4,used,\n99,rejected,\n"
    )
    decided, notes = apply_decisions(points, taken)
    assert len(decided) == len(points) == 3
    assert decided.status.tolist() == [Status.FLAGGED, Status.USED, Status.REJECTED]
    assert decided.reasons.tolist() == [Reason.BY_HAND, 0, Reason.TILT | Reason.NO_FIX]
    assert decided.used.tolist() == [True, True, False]
    assert points.status.tolist() == [0, 0, 0]
    assert [(note.values["survey_line"], note.values["line"]) for note in notes] == [(4, 5), (99, 6)]


def test_decisions_do_not_need_the_points_in_order(survey, tmp_path):
    points = read_points(survey).points.select(np.array([2, 0, 1]))
    decided, _ = apply_decisions(points, decisions(tmp_path, "line,status,reason\n2,rejected,duplicate\n"))
    assert decided.status.tolist() == [Status.USED, Status.REJECTED, Status.USED]


def test_a_table_of_points_is_a_table_of_decisions(survey, tmp_path):
    points = read_points(survey).points
    chosen = points.with_status(np.array([2, 0, 1]), np.array([Reason.TILT, Reason.BY_HAND, Reason.POLE_HEIGHT]))
    write_points(chosen, tmp_path / "points.csv")
    decided, notes = apply_decisions(points, read_decisions(tmp_path / "points.csv"))
    assert decided.status.tolist() == chosen.status.tolist()
    assert decided.reasons.tolist() == chosen.reasons.tolist()
    assert not notes


@pytest.mark.parametrize(
    ("text", "code", "told"),
    [
        ("line,state,reason\n2,used,\n", "no_column", "status"),
        ("line,status,reason\n2,gone,\n", "bad_status", "line 2: 'gone'"),
        ("line,status,reason\n\n2,used,because\n", "bad_reason", "line 3: 'because'"),
        ("line,status,reason\n2,used,tilt+\n", "bad_reason", "line 2"),
        ("line,status,reason\nP2,used,\n", "bad_line", "'P2'"),
        ("line,status,reason\n0,used,\n", "bad_line", "'0'"),
        ("line,status,reason\n2,used,\n3,used,\n2,rejected,\n", "decided_twice", "line 4: survey line 2"),
        ('line,status,reason\n"2,used,\n', "bad_quotes", "line 2"),
    ],
)
def test_mistakes_in_decisions_name_file_and_line(tmp_path, text, code, told):
    with pytest.raises(SurveyError) as caught:
        decisions(tmp_path, text)
    assert caught.value.code == "decisions." + code
    assert told in str(caught.value)
    assert "decisions.csv" in str(caught.value)


def test_a_file_is_replaced_whole_or_not_at_all(tmp_path):
    path = tmp_path / "out.csv"
    path.write_text("old", encoding="utf-8")

    def fail():
        with replace_file(path) as temporary:
            temporary.write_text("half", encoding="utf-8")
            raise KeyError

    with pytest.raises(KeyError):
        fail()
    assert path.read_text(encoding="utf-8") == "old"
    with replace_file(path) as temporary:
        assert temporary.suffix == ".csv"
        assert temporary.parent == tmp_path
        temporary.write_text("new", encoding="utf-8")
        assert path.read_text(encoding="utf-8") == "old"
    assert path.read_text(encoding="utf-8") == "new"
    assert os.listdir(tmp_path) == ["out.csv"]


def test_where_nothing_can_be_written_it_is_said(tmp_path):
    for path in (tmp_path / "no" / "out.csv", tmp_path):
        with pytest.raises(SurveyError) as caught:
            write_points(make_points([1.0], [2.0], [3.0]), path)
        assert caught.value.code == "files.cannot_write"
        assert str(path) in str(caught.value)
    assert os.listdir(tmp_path) == []
