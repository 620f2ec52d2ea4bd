"""Decisions on single points outlast a corrected file, and hit no other point."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from plugin.core.contours.lines import ContourOptions
from plugin.core.job.plain import from_plain, to_plain
from plugin.core.job.run import compute
from plugin.core.job.settings import JobSettings
from plugin.core.points.decided import PointDecision, PointRow, after_edit, find_decided
from plugin.core.points.decisions import locate_decisions, read_decisions
from plugin.core.points.pointset import make_points
from plugin.core.points.table import write_points


def points(names, easting=None, northing=None, first=2):
    """A walk, a step of 0.5 m from point to point; the first in line ``first``."""
    count = len(names)
    easting = 500000.0 + 0.5 * np.arange(count) if easting is None else np.asarray(easting)
    northing = 5800000.0 + 0.1 * np.sin(7.0 * easting) if northing is None else np.asarray(northing)
    lines = np.arange(count) + first
    return make_points(easting, northing, np.full(count, 100.0), name=np.array(names, object), source_line=lines)


def without(whole, *gone):
    """The same file with some lines removed."""
    kept = np.setdiff1d(np.arange(len(whole)), gone)
    return points(list(whole.name[kept]), whole.easting[kept], whole.northing[kept])


def on(whole, k, status="rejected", name=""):
    place = (round(float(whole.easting[k]), 3), round(float(whole.northing[k]), 3))
    return PointDecision(int(whole.source_line[k]), status, "by_hand", name, "", *place)


def hit(survey, *decided):
    """Places in the order of the survey of the points that are hit, and what is told."""
    found = find_decided(survey, decided, "job.json")
    at = locate_decisions(survey, found.decisions).point
    return at.tolist(), " ".join(one.say() for one in found.messages)


def rows_of(survey, decided=(), check="used"):
    """The rows of a layer that shows the survey with its decisions."""
    found = find_decided(survey, decided, "job.json").decisions
    at = dict(zip(locate_decisions(survey, found).point.tolist(), found.status.tolist()))
    words = ["used", "flagged", "rejected"]
    return [
        PointRow(
            int(survey.source_line[k]), str(survey.name[k]), "", words[at[k]] if k in at else check, "by_hand", check,
            round(float(survey.easting[k]), 3), round(float(survey.northing[k]), 3),
        )
        for k in range(len(survey))
    ]  # fmt: skip


NAMED, PLAIN = [f"p{k}" for k in range(40)], [""] * 40


@pytest.mark.parametrize(("names", "name"), [(NAMED, "p18"), (PLAIN, ""), (["GR"] * 40, "GR")])
def test_a_decision_that_was_found_again_can_be_taken_back_and_changed(names, name):
    before = points(names)
    decided = (on(before, 18, name=name), on(before, 30, name=names[30]))
    now = without(before, 5)
    rows = rows_of(now, decided)
    assert [k for k, row in enumerate(rows) if row.status == "rejected"] == [17, 29]
    assert after_edit(decided, rows) == decided, "nothing was changed, nothing is decided twice"
    rows[17] = rows[17]._replace(status="used")
    assert after_edit(decided, rows) == decided[1:]
    rows[17] = rows[17]._replace(status="flagged")
    changed = after_edit(decided, rows)
    assert [(one.line, one.status, one.name) for one in changed] == [(19, "flagged", name), (32, "rejected", names[30])]


def test_a_filtered_layer_takes_nothing_back():
    mine = PointDecision(9, "rejected", "by_hand", "p7", "a.csv")
    row = PointRow(12, "p7", "b.csv", "used", "by_hand", "used")
    assert after_edit((mine,), [row]) == (mine,)


def test_two_entries_on_one_point_are_taken_back_together():
    survey = points(NAMED)
    twice = (replace(on(survey, 18, name="p18"), line=33), on(survey, 18, name="p18"))
    rows = rows_of(survey, twice)
    rows[18] = rows[18]._replace(status="used")
    assert after_edit(twice, rows) == ()


@pytest.mark.parametrize("name", ["", "GR"])
def test_without_a_name_of_its_own_the_place_tells_which_point_is_meant(name):
    before = points([name] * 40)
    mine = on(before, 18, name=name)
    assert hit(before, mine) == ([18], "")
    at, told = hit(without(before, 5), mine)
    assert at == [17]
    assert "found again by its place, in line 19" in told
    at, told = hit(without(before, 18), mine)
    assert at == [], "the point is gone, and the next one is not meant"
    assert "no longer has a point" in told
    old = replace(mine, easting=None, northing=None)  # of a job before places were kept
    assert hit(before, old) == ([18], "")


def test_points_measured_anew_keep_a_decision_on_their_own_name():
    before = points(NAMED)
    moved = points(NAMED, before.easting + 0.3)
    assert hit(moved, on(before, 18, name="p18")) == ([18], "")


def test_a_survey_that_has_moved_as_a_whole_keeps_its_decisions_by_line():
    before = points(PLAIN)
    mine = [on(before, k) for k in (4, 18, 30)]
    scaled = points(PLAIN, 300000.0 + 1.0004 * (before.northing - 5800000), 5700000.0 + 1.0004 * before.easting)
    at, told = hit(scaled, *mine)
    assert sorted(at) == [4, 18, 30]
    assert told.count("whole survey lies elsewhere") == 1
    assert "no longer" not in told
    at, told = hit(scaled, *mine[:1])
    assert at == [], "one alone does not tell"
    assert "no longer has a point" in told
    at, _ = hit(without(before, 4), *mine)
    assert sorted(at) == [17, 29], "nothing has moved where some are at their places"


def test_points_that_were_deleted_do_not_look_like_a_survey_that_moved():
    before = points(PLAIN, northing=5800000 + 3 * np.sin(np.arange(40.0)))
    mine = [on(before, k) for k in (4, 18, 30)]
    assert hit(without(before, 4, 18, 30), *mine)[0] == []


def test_decisions_that_contradict_are_told_and_the_last_counts():
    survey = points(NAMED)
    mine = (on(survey, 18, name="p18"), on(survey, 18, "used", name="p18"))
    found = find_decided(survey, mine, "job.json")
    assert found.decisions.status.tolist() == [0]
    assert "the point of line 20 twice and not alike; the later decision counts: used" in found.messages[0].say()
    assert not find_decided(survey, (mine[0], mine[0]), "job.json").messages


def test_the_place_is_kept_in_the_file_and_may_be_missing(tmp_path):
    mine = on(points(NAMED), 18, name="p18")
    assert from_plain(PointDecision, to_plain(mine, tmp_path, {}), tmp_path, {}) == mine
    assert from_plain(PointDecision, {"line": 9, "status": "used"}, tmp_path, {}) == PointDecision(9, "used")


HEAD = "line,status,reason,name\n"


def file_hits(path, survey, text):
    path.write_text(text, encoding="utf-8")
    located = locate_decisions(survey, read_decisions(path))
    return located.point.tolist(), " ".join(one.say() for one in located.messages)


def test_a_file_of_decisions_that_tells_names_hits_no_other_point(tmp_path):
    file, before = tmp_path / "d.csv", points(NAMED)
    text = HEAD + "20,rejected,,p18\n32,rejected,,p30\n12,flagged,,\n"
    assert file_hits(file, before, text) == ([18, 30, 10], "")
    at, told = file_hits(file, without(before, 5, 30), text)
    assert at == [17, -1, 10], "a line without a name stays a line"
    assert "the decision on p18 was found by its name in line 19 of the survey (it was line 20)" in told
    assert "d.csv, line 3: the point of survey line 32 is not p30, and no other point is p30 for sure" in told
    same = points(["GR"] * 40)
    at, told = file_hits(file, same, HEAD + "20,rejected,,GR\n90,rejected,,GR\n21,used,,XX\n")
    assert at == [18, -1, -1]
    assert told.count("no effect") == 2


def test_the_table_of_points_of_a_job_stays_with_its_points_when_the_file_is_corrected(tmp_path):
    rows = [f"p{k},{500000 + 1.5 * (k % 7)},{5800000 + 1.5 * (k // 7)},{100 + 0.02 * k}" for k in range(49)]
    survey = tmp_path / "s.csv"
    survey.write_text("\n".join(["name,easting,northing,height", *rows]) + "\n", encoding="utf-8")
    settings = JobSettings(survey, tmp_path / "job", ContourOptions(0.1), "local", check=False, find_lines=False)
    mine = (PointDecision(20, "rejected", "by_hand", "p18"),)
    table = tmp_path / "table.csv"
    write_points(compute(replace(settings, decided=mine)).points, table)
    del rows[4]
    survey.write_text("\n".join(["name,easting,northing,height", *rows]) + "\n", encoding="utf-8")
    for own in ((), (PointDecision(9, "rejected", "by_hand", "p8"),)):
        result = compute(replace(settings, decisions=table, decided=own))
        out = result.points.name[result.points.status == 2].tolist()
        assert out == [*(one.name for one in own), "p18"]
        assert "were found by their names, the first, on p5, in line 6 (it was line 7)" in " ".join(
            one.say() for one in result.messages
        )
