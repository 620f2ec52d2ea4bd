"""Lines that the points show: breaklines of the job, decisions that are replayed, and what gives way to what."""

from __future__ import annotations

import csv
import dataclasses
import json
import pathlib
import re

import numpy as np
import pytest
import simulated_lines as simulated
from pyproj import CRS

from plugin.core.__main__ import make_parser
from plugin.core.arguments.settings import job_settings
from plugin.core.features.find import find_features
from plugin.core.features.found import Features, FoundKind, FoundLine
from plugin.core.features.ground_lines import (
    GroundLine,
    LineStatus,
    ground_lines,
    share_near,
    with_status,
    without_doubles,
)
from plugin.core.features.replay import replay
from plugin.core.handover.found_lines import read_found_lines, write_found_lines
from plugin.core.job.run import run_job
from plugin.core.linework.constraints import Constraints, LineKind, make_line
from plugin.core.messages import SurveyError
from plugin.core.points.decisions import read_decisions
from plugin.core.points.pointset import Reason, make_points
from plugin.core.report.summary import summary
from plugin.core.surface.ask import ask_surface
from plugin.core.surface.build import build_surface
from plugin.core.surface.edited import build_surface_with_edits
from plugin.core.surface.edits import MovePoint
from plugin.core.surface.giving_way import found_breaklines
from plugin.core.surface.standing import stand_in
from test_data import ground

PLACES = np.array([(x, y, 10.0) for x in range(0, 41, 4) for y in range(0, 21, 4)], float)
FLAT = make_points(*PLACES.T, source="flat.csv")


def step(y=10.0, low=10.0, high=10.12, start=2.0, end=38.0, **said):
    """A kerb along x: foot and top 4 cm apart, a vertex every 2 m."""
    x = np.arange(start, end + 0.1, 2.0)
    parts = tuple(
        np.column_stack([x, np.full(len(x), at), np.full(len(x), z)]) for at, z in ((y, low), (y + 0.04, high))
    )
    said = {"automatic": LineStatus.USED, "status": LineStatus.USED, **said}
    return GroundLine(FoundKind.STEP, parts, parts, step=high - low, evidence=20.0, passes=9, **said)


def break_at(x, low=0.0, high=20.0, z=10.0, **said):
    """A top of a slope along y, a vertex every 2 m."""
    y = np.arange(low, high + 0.1, 2.0)
    parts = (np.column_stack([np.full(len(y), x), y, np.full(len(y), z)]),)
    said = {"automatic": LineStatus.USED, "status": LineStatus.USED, **said}
    return GroundLine(FoundKind.TOP, parts, parts, bend=0.4, evidence=9.0, passes=6, **said)


def coded(*xyz):
    return Constraints((make_line(LineKind.BREAKLINE, np.array(xyz, float), "KF 1"),))


# --- lines that are known go first ----------------------------------------------------------------


def test_a_found_line_beside_a_coded_one_is_dropped_and_counted():
    known = coded((0, 9.85, 10), (40, 9.85, 10))
    kept, said = without_doubles([step(), break_at(21.0)], known)
    assert [line.kind for line in kept] == [FoundKind.TOP]  # it crosses the coded line, which is no double
    assert said[0].values["count"] == 1


def test_a_line_beside_less_than_half_of_a_coded_one_stays():
    kept, said = without_doubles([step()], coded((0, 10, 10), (18, 10, 10)))
    assert len(kept) == 1
    assert not said


@pytest.mark.parametrize("y", [9.0, 10.75])
def test_a_coded_line_farther_off_is_another(y):
    assert len(without_doubles([step()], coded((0, y, 10), (40, y, 10)))[0]) == 1


def test_a_line_without_heights_is_no_double():
    known = Constraints((make_line(LineKind.BREAKLINE, np.array([(0, 10), (40, 10)], float)),))
    assert len(without_doubles([step()], known)[0]) == 1


def test_a_found_line_gives_way_where_it_crosses_a_coded_one():
    known, lines = coded((21, 1, 9), (21, 19, 9)), [step()]
    everything = [*known.lines, *(make_line(LineKind.BREAKLINE, part) for part in lines[0].parts)]
    with pytest.raises(SurveyError, match="cross"):
        build_surface(FLAT, Constraints(tuple(everything)))
    found = found_breaklines(lines, known, FLAT)
    held, said = found.breaklines, found.messages
    assert len(held) == 4  # foot and top, each on both sides of the coded line
    assert said[0].values["count"] == 1
    assert said[0].values["length"] == pytest.approx(2.0)
    for line in held.lines:
        assert line.xyz[:, 0].max() <= 20 or line.xyz[:, 0].min() >= 22
    surface = build_surface(FLAT, Constraints((*known.lines, *held.lines)))
    assert not surface.report.conflicts


def test_of_found_lines_that_cross_the_weaker_gives_way_and_what_the_hand_used_does_not():
    crossing = break_at(21.0, z=10.06)
    held = found_breaklines([step(), crossing], Constraints(), FLAT).breaklines
    assert [line.label for line in held.lines] == ["step 1", "step 1", "top 2", "top 2"]
    assert len(held.lines[0].xyz) == len(step().parts[0])
    by_hand = with_status(crossing, LineStatus.USED)
    found = found_breaklines([step(), by_hand], Constraints(), FLAT)
    held, said = found.breaklines, found.messages
    assert len(next(line for line in held.lines if line.label == "top 2").xyz) == len(crossing.parts[0])
    assert len([line for line in held.lines if line.label == "step 1"]) == 4
    assert len(said) == 1
    build_surface(FLAT, held)


def test_a_line_that_has_given_way_takes_nothing_with_it():
    """B crosses the known line and C; C crosses only B's stretch that is gone."""
    known = coded((21, 1, 9), (21, 11, 9))
    lines = [step(y=10.0, start=20.0, end=22.0), break_at(20.5, z=10.5)]
    held = found_breaklines(lines, known, FLAT).breaklines
    assert [line.label for line in held.lines] == ["top 2"]


def test_only_used_lines_are_held():
    lines = [step(status=LineStatus.PROPOSED), step(y=5.0, status=LineStatus.REJECTED)]
    assert len(found_breaklines(lines, Constraints(), FLAT).breaklines) == 0


# --- points that stand in a step -------------------------------------------------------------------


def beside_the_kerb(*rows):
    """Points of (x, y, z, what is added), after those of the flat ground."""
    points = make_points(*np.vstack([PLACES, np.array(rows, float)]).T)
    return points, len(PLACES)


def test_a_line_stands_for_the_points_that_agree_with_it():
    rows = [(9, 9.5, 10.03), (9, 10.6, 10.09), (13, 10.02, 10.06),  # foot, top, face
            (17, 9.5, 10.12), (17, 10.5, 10.0),  # on the wrong side of the step
            (19, 10.02, 10.3), (21, 8.7, 10.0)]  # too high, too far  # fmt: skip
    points, first = beside_the_kerb(*rows)
    held = found_breaklines([step()], Constraints(), points)
    marked, said = stand_in(points, held.steps)
    assert marked.in_line[first:].tolist() == [True, True, True, False, False, False, False]
    assert not marked.in_line[:first].any()
    assert said[0].values["count"] == 3
    assert (marked.status == points.status).all()  # none is rejected
    surface = build_surface(marked, held.breaklines)
    assert surface.report.points_used == len(points) - 3
    assert ask_surface(surface.tin, np.array([(9, 9.5)])).height[0] == pytest.approx(10.0)


def test_no_line_stands_for_a_point_where_it_gave_way_or_where_a_hand_decided():
    points, first = beside_the_kerb((9, 9.5, 10.0), (22.8, 9.5, 10.0), (27, 9.5, 10.0))
    known = coded((22, 1, 9), (23, 19, 9))
    reasons = points.reasons.copy()
    reasons[first + 2] = Reason.BY_HAND
    points = points.with_status(points.status, reasons)
    marked, _ = stand_in(points, found_breaklines([step()], known, points).steps)
    assert marked.in_line[first:].tolist() == [True, False, False]
    assert not stand_in(marked, ())[0].in_line.any()  # the mark goes with the line


def test_a_moved_point_is_in_the_surface_though_a_line_stood_for_it():
    points, _ = beside_the_kerb((9, 9.5, 10.03))
    held = found_breaklines([step()], Constraints(), points)
    marked, _ = stand_in(points, held.steps)
    move = MovePoint((9.0, 9.5), height=10.04)
    surface, told = build_surface_with_edits(marked, held.breaklines, edits=[move])
    assert told.applied == (1,)
    assert ask_surface(surface.tin, np.array([(9, 9.5)])).height[0] == pytest.approx(10.04)


def test_of_a_break_of_slope_all_points_stay():
    points, _ = beside_the_kerb((9, 9.5, 10.0))
    assert found_breaklines([break_at(9.2)], Constraints(), points).steps == ()


# --- decisions ------------------------------------------------------------------------------------


def moved(line, dy):
    """The line as it is found from other points: a little aside, other vertices."""
    parts = tuple(np.column_stack([part[::2, 0] + 0.3, part[::2, 1] + dy, part[::2, 2]]) for part in line.parts)
    return dataclasses.replace(line, parts=parts, found_as=parts)


def test_a_decision_finds_its_line_again():
    given = [with_status(step(), LineStatus.REJECTED), step(y=16.0)]
    lines, said = replay([moved(step(y=16.0), 0.1), moved(step(), 0.15)], given)
    assert [line.status for line in lines] == [LineStatus.USED, LineStatus.REJECTED]
    assert [line.by_hand for line in lines] == [False, True]
    assert not said


def test_a_decision_is_about_lines_of_its_kind():
    valley = dataclasses.replace(step(), kind=FoundKind.VALLEY)
    lines, said = replay([step()], [with_status(valley, LineStatus.REJECTED)])
    assert [line.status for line in lines] == [LineStatus.USED, LineStatus.REJECTED]
    assert said[0].values["count"] == 1


def test_a_decision_counts_for_all_lines_that_its_line_fell_into():
    lines, _ = replay([step(end=18.0), step(start=20.0)], [with_status(step(), LineStatus.REJECTED)])
    assert [line.status for line in lines] == [LineStatus.REJECTED] * 2


def test_a_short_decision_does_not_decide_a_long_line():
    short = with_status(step(start=10.0, end=14.0), LineStatus.REJECTED)
    lines, said = replay([step()], [short])
    assert lines[0].status is LineStatus.USED
    assert len(lines) == 2
    assert len(said) == 1


def test_a_course_drawn_by_hand_takes_the_place_of_the_lines():
    drawn = tuple(part + np.array([0.0, 1.4, 0.0]) for part in step().parts)
    given = dataclasses.replace(step(), parts=drawn, by_hand=True)
    lines, said = replay([step(end=18.0), step(start=20.0)], [given])
    assert len(lines) == 1
    assert lines[0].reshaped
    assert not said
    np.testing.assert_array_equal(lines[0].parts[0], drawn[0])
    again, _ = replay([step()], lines)
    np.testing.assert_array_equal(again[0].parts[1], drawn[1])


# --- the file ---------------------------------------------------------------------------------------


@pytest.fixture
def file(tmp_path):
    """A file of two lines, and a way to change it as an editor would."""
    path = tmp_path / "lines_found.geojson"
    write_found_lines([step(), break_at(5.0, status=LineStatus.PROPOSED, automatic=LineStatus.PROPOSED)], None, path)

    def change(edit):
        told = json.loads(path.read_text(encoding="utf-8"))
        edit(told["features"])
        path.write_text(json.dumps(told), encoding="utf-8")
        return read_found_lines(path)

    return change


def test_what_was_not_touched_is_no_decision(file):
    lines = file(lambda features: None).lines
    assert [line.by_hand for line in lines] == [False, False]
    np.testing.assert_allclose(lines[0].parts[1], step().parts[1], atol=1e-3)
    assert (lines[0].passes, lines[0].step, lines[1].bend) == (9, pytest.approx(0.12), pytest.approx(0.4))


def test_a_file_in_feet_holds_the_same_metres(tmp_path):
    crs = CRS("EPSG:2263")  # U.S. survey feet
    write_found_lines([step()], crs, tmp_path / "feet.geojson")
    told = json.loads((tmp_path / "feet.geojson").read_text(encoding="utf-8"))
    first = told["features"][0]["geometry"]["coordinates"][0][0]
    assert first == pytest.approx([2 * 3937 / 1200, 10 * 3937 / 1200, 10 * 3937 / 1200], abs=1e-4)
    line = read_found_lines(tmp_path / "feet.geojson", crs).lines[0]
    assert not line.by_hand
    np.testing.assert_allclose(line.parts[1], step().parts[1], atol=1e-3)


def test_another_status_is_a_decision(file):
    def edit(features):
        features[0]["properties"]["status"] = "rejected"
        features[1]["properties"]["status"] = " Used"

    assert [(line.status.value, line.by_hand) for line in file(edit).lines] == [("rejected", True), ("used", True)]


def test_another_course_is_a_decision_and_a_vertex_of_height_0_lies_between_its_neighbours(file):
    def edit(features):
        foot = features[0]["geometry"]["coordinates"][0]
        foot[3:4] = [[8.0, 9.5, 0.0]]

    given = file(edit)
    assert given.lines[0].by_hand
    assert given.lines[0].reshaped
    assert given.lines[0].parts[0][3].tolist() == pytest.approx([8.0, 9.5, 10.0])
    assert given.messages[0].values["count"] == 1


def test_a_file_that_lost_its_heights_has_those_that_were_found(file):
    def edit(features):
        for feature in features:
            feature["geometry"]["coordinates"] = [
                [place[:2] for place in part] for part in feature["geometry"]["coordinates"]
            ]

    lines = file(edit).lines
    assert not any(line.by_hand for line in lines)
    assert lines[0].parts[1][0, 2] == pytest.approx(10.12)


def cut_off(path):
    """What a shapefile leaves of texts."""
    told = json.loads(path.read_text(encoding="utf-8"))
    for feature in told["features"]:
        for name, value in feature["properties"].items():
            if isinstance(value, str):
                feature["properties"][name] = value[:254]
    path.write_text(json.dumps(told), encoding="utf-8")
    return told


def long_line(wave=0.0):
    line = step(end=90.0)
    parts = tuple(part + np.column_stack([part[:, 0] * 0, wave * np.sin(part[:, 0] / 5), 0 * part[:, 0]])
                  for part in line.parts)  # fmt: skip
    return dataclasses.replace(line, parts=parts, found_as=parts)


@pytest.mark.parametrize("wave", [0.0, 0.4, 3.0])
def test_a_format_that_cuts_texts_off_keeps_decisions_and_reshaped_courses(tmp_path, wave):
    path = tmp_path / "cut.geojson"
    line = long_line(wave)
    write_found_lines([line], None, path)
    assert len(json.loads(path.read_text(encoding="utf-8"))["features"][0]["properties"]["course"]) <= 254
    told = cut_off(path)
    assert not read_found_lines(path).lines[0].by_hand
    told["features"][0]["properties"]["status"] = "rejected"
    path.write_text(json.dumps(told), encoding="utf-8")
    (given,) = read_found_lines(path).lines
    assert (given.by_hand, given.reshaped, given.status) == (True, False, LineStatus.REJECTED)
    told["features"][0]["properties"]["status"] = "used"
    for part in told["features"][0]["geometry"]["coordinates"]:
        for place in part[10:]:
            place[1] += 0.8
    path.write_text(json.dumps(told), encoding="utf-8")
    (given,) = read_found_lines(path).lines
    assert given.reshaped
    lines, said = replay([line], [given])  # the course that was drawn takes the place of the one found
    assert not said
    assert len(lines) == 1
    np.testing.assert_allclose(lines[0].parts[0], given.parts[0])
    write_found_lines(lines, None, path)
    cut_off(path)
    again, said = replay([line], read_found_lines(path).lines)
    assert not said
    np.testing.assert_allclose(again[0].parts[0], given.parts[0], atol=1e-3)


def test_a_single_vertex_that_was_moved_is_seen_where_texts_are_cut_off(tmp_path):
    path = tmp_path / "cut.geojson"
    write_found_lines([long_line()], None, path)
    told = cut_off(path)
    for moved in (1, 20, -1):
        changed = json.loads(json.dumps(told))
        changed["features"][0]["geometry"]["coordinates"][0][moved][1] += 0.1
        path.write_text(json.dumps(changed), encoding="utf-8")
        assert read_found_lines(path).lines[0].reshaped


def test_the_place_for_one_more_pass_is_kept(tmp_path):
    path = tmp_path / "places.geojson"
    write_found_lines([step(cross_at=(432000.125, 5765000.5)), step(y=14.0)], None, path)
    first, second = read_found_lines(path).lines
    assert first.cross_at == (432000.125, 5765000.5)
    assert np.isnan(second.cross_at).all()


def test_a_line_that_was_added_is_used(file):
    def edit(features):
        features.append(
            {"type": "Feature", "properties": {"kind": "ridge"},
             "geometry": {"type": "LineString", "coordinates": [[1, 1, 9], [5, 5, 9.5]]}}
        )  # fmt: skip

    added = file(edit).lines[2]
    assert (added.status, added.by_hand) == (LineStatus.USED, True)


def spoil_kind(features):
    features[0]["properties"]["kind"] = "fence"


def spoil_status(features):
    features[1]["properties"]["status"] = "yes"


def spoil_place(features):
    features[1]["geometry"]["coordinates"] = [[[1, 1, 1]]]


def spoil_heights(features):
    features[1]["geometry"]["coordinates"] = [[[1, 1, 0], [2, 2, 0], [3, 7, 0]]]


@pytest.mark.parametrize(
    ("spoil", "word"),
    [(spoil_kind, "fence"), (spoil_status, "yes"), (spoil_place, "feature 2"), (spoil_heights, "no heights")],
)
def test_what_cannot_be_meant_is_refused(file, spoil, word):
    with pytest.raises(SurveyError, match=word):
        file(spoil)


# --- the job ----------------------------------------------------------------------------------------


@pytest.fixture(scope="module")
def street(tmp_path_factory):
    """A street with kerbs of 120 mm, crossed every 2.5 m, as a file without codes."""
    site = simulated.street(5, between=2.5, height=0.12, curved=True)
    path = tmp_path_factory.mktemp("street") / "street.csv"
    p = site.points
    rows = [f"{i + 1},{e:.4f},{n:.4f},{h:.4f}" for i, (e, n, h) in enumerate(zip(p.easting, p.northing, p.height))]
    path.write_text("\n".join(["name,easting,northing,height", *rows]) + "\n", encoding="utf-8")
    return site, path


def job(path, out, *more):
    words = [str(path), "--crs=EPSG:25832", "--interval=0.05", "--rim-edge=6", f"--out={out}", *more]
    return run_job(job_settings(make_parser().parse_args(words)))


@pytest.fixture(scope="module")
def with_lines(street, tmp_path_factory):
    return job(street[1], tmp_path_factory.mktemp("with"), "--landxml", "--dxf")


@pytest.fixture(scope="module")
def without_lines(street, tmp_path_factory):
    return job(street[1], tmp_path_factory.mktemp("without"), "--found-lines=no")


def breakline_edges(result):
    return int(result.surface.report.edges[LineKind.BREAKLINE])


def test_both_kerbs_are_breaklines_of_the_surface(street, with_lines):
    used = with_lines.ground_lines.of_status(LineStatus.USED)
    truth = [line.xy[line.asked] + simulated.ORIGIN for line in street[0].lines]
    for kerb in truth:
        assert share_near([kerb], [line.parts[0] for line in used]) > 0.8
    assert all(line.kind is FoundKind.STEP and abs(line.step - 0.12) < 0.02 for line in used)
    assert breakline_edges(with_lines) >= sum(len(p) - 1 for line in used for p in line.parts)


def test_points_that_a_line_stands_for_are_told_of_and_no_decision(with_lines):
    folder = with_lines.files[0].parent
    count = int(with_lines.points.in_line.sum())
    assert 0.03 * len(with_lines.points) < count < 0.4 * len(with_lines.points)
    with open(folder / "points.csv", encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    assert sum("in_line" in row["reason"] for row in rows) == count
    assert len(read_decisions(folder / "points.csv")) == 0
    assert [line for line in summary(with_lines, folder) if f"{count} points stand in found steps" in line]
    assert "stands in a found line" in (folder / "report.html").read_text(encoding="utf-8")


def test_the_switch_looks_for_none(without_lines):
    assert without_lines.ground_lines is None
    assert breakline_edges(without_lines) == 0
    assert not [path for path in without_lines.files if path.name == "lines_found.geojson"]


def test_surface_is_nearer_to_the_ground_along_the_kerbs(street, with_lines, without_lines):
    """Heights within 0.5 m of the kerbs against the simulated ground."""
    site, off = street[0], []
    kerb = site.lines[0].xy[40:-40:5]
    at = np.concatenate([kerb + np.array([dx, dy]) for dx in (-0.35, 0.0, 0.35) for dy in (-0.35, 0.35)])
    for result in (with_lines, without_lines):
        tin = result.surface.tin
        found = ask_surface(tin, at + simulated.ORIGIN).height
        good = np.isfinite(found)
        off.append(float(np.sqrt(np.mean((found - site.ground(*at.T))[good] ** 2))))
    assert off[0] < 0.8 * off[1]


def test_the_files_name_the_kinds(with_lines):
    folder = with_lines.files[0].parent
    xml, dxf = ((folder / name).read_text(encoding="cp1252") for name in ("surface.xml", "surface.dxf"))
    used = with_lines.ground_lines.of_status(LineStatus.USED)
    assert xml.count('brkType="standard" name="step ') == 2 * len(used)
    assert xml.count("<Breakline ") == 2 * len(used)  # none of them twice
    assert "BREAKLINE_STEP" in dxf


def test_summary_and_report_tell_of_them(with_lines, without_lines):
    folder = with_lines.files[0].parent
    (line,) = [line for line in summary(with_lines, folder) if line.startswith("Found ")]
    assert f"{len(with_lines.ground_lines.of_status(LineStatus.USED))} lines" in line
    text = (folder / "report.html").read_text(encoding="utf-8")
    assert 'id="found_lines"' in text
    assert re.search(r"\b1[12][0-9] ± ", text)  # the kerbs are 120 mm high
    assert not [line for line in summary(without_lines, folder) if line.startswith("Found ")]
    assert "were not looked for" in (without_lines.files[0].parent / "report.html").read_text(encoding="utf-8")


def test_decisions_of_the_file_are_kept_from_run_to_run(street, with_lines, tmp_path):
    told = json.loads((with_lines.files[0].parent / "lines_found.geojson").read_text(encoding="utf-8"))
    told["features"][0]["properties"]["status"] = "rejected"
    for part in told["features"][1]["geometry"]["coordinates"]:
        for place in part:
            place[2] += 0.5
    given = tmp_path / "mine.geojson"
    given.write_text(json.dumps(told), encoding="utf-8")
    first = job(street[1], tmp_path / "first", f"--found-lines={given}")
    second = job(street[1], tmp_path / "second", f"--found-lines={tmp_path / 'first' / 'lines_found.geojson'}")
    for result in (first, second):
        rejected, drawn = result.ground_lines.lines[:2]
        assert (rejected.status, rejected.by_hand) == (LineStatus.REJECTED, True)
        assert drawn.reshaped
        assert drawn.status is LineStatus.USED
        before = with_lines.ground_lines.lines[1].parts[0]
        np.testing.assert_allclose(drawn.parts[0], before + np.array([0, 0, 0.5]), atol=1e-3)
        assert {line.label for line in result.ground_lines.breaklines.lines} == {"step 2"}
        assert result.surface.tin.height_range[1] > with_lines.surface.tin.height_range[1] + 0.3
    files = [tmp_path / name / "lines_found.geojson" for name in ("first", "second")]
    assert files[0].read_bytes() == files[1].read_bytes()


def test_lines_of_the_ground_that_are_coded_too_are_dropped(street):
    site = street[0]
    found = ground_lines(find_features(site.points))
    known = Constraints(tuple(make_line(LineKind.BREAKLINE, line.parts[0]) for line in found))
    kept, said = without_doubles(found, known)
    assert not kept
    assert said[0].values["count"] == len(found) > 0


def test_a_line_in_doubt_says_where_one_more_pass_tells_most():
    x = np.arange(0.0, 21.0, 2.0)
    some = {"kind": FoundKind.TOP, "easting": x, "northing": x * 0, "height": x * 0, "top": np.empty((0, 3)),
            "sigma_height": x * 0 + 0.01, "step": np.nan, "sigma_step": np.nan, "bend": 0.3, "passes": 5,
            "evidence": 3.0, "strong": False}  # fmt: skip
    doubt = np.where(x == 6.0, 0.3, 0.1)
    whole = FoundLine(**some, sigma_plan=doubt, bridged=np.zeros(10, bool))
    gap = FoundLine(**some, sigma_plan=doubt, bridged=np.isin(np.arange(10), [0, 6, 7]))
    lines = ground_lines(Features((whole, gap), np.empty(0, int), *[np.empty(0, bool)] * 2, 0.01))
    assert [line.status for line in lines] == [LineStatus.PROPOSED] * 2
    assert [line.cross_at for line in lines] == [(6.0, 0.0), (14.0, 0.0)]
    assert lines[1].bridged == pytest.approx(6.0)


def test_the_demo_without_codes_is_built_and_says_what_it_found(tmp_path):
    """Taken off the coded survey, whose kerbs are shots every 3 m that no pass crosses: nothing is claimed."""
    demo = pathlib.Path(__file__).parents[2] / "test_data" / "demo" / "survey.csv"
    with open(demo, encoding="utf-8", newline="") as file:
        rows = list(csv.reader(file))
    for row in rows[1:]:
        if len(row) > 4 and not row[0].startswith("#"):
            row[4] = ""
    with open(tmp_path / "bare.csv", "w", encoding="utf-8", newline="") as file:
        csv.writer(file, lineterminator="\n").writerows(rows)
    result = job(tmp_path / "bare.csv", tmp_path / "out", "--no-codes")
    used = result.ground_lines.of_status(LineStatus.USED)
    path = tmp_path / "out" / "lines_found.geojson"
    assert path in result.files
    data = json.loads(path.read_text(encoding="utf-8"))
    assert data["type"] == "FeatureCollection"  # RFC 7946, 3.3
    assert len(data["features"]) == len(result.ground_lines.lines)
    assert len(read_found_lines(path, result.crs).lines) == len(data["features"])
    (line,) = [line for line in summary(result, path.parent) if line.startswith("Found ")]
    assert ("no line without codes" in line) == (not result.ground_lines.lines)
    assert (breakline_edges(result) > 0) == bool(used)


def test_in_the_demo_walked_without_a_code_kerbs_and_ditch_are_found(tmp_path):
    """Against its ground in closed form: kerbs of 80 mm and more that passes cross, the ditch where 0.3 m deep."""
    demo = pathlib.Path(__file__).parents[2] / "test_data" / "demo" / "uncoded.csv"
    result = job(demo, tmp_path / "out")
    used = result.ground_lines.of_status(LineStatus.USED)
    share = {}
    for name, (kinds, course) in demo_lines().items():
        parts = [part for line in used if line.kind in kinds for part in line.parts]
        share[name] = share_near([course], parts, 0.3)
    assert min(share["left kerb"], share["right kerb"]) >= 0.95
    assert min(share["ditch bottom"], share["left edge"], share["right edge"]) >= 0.9
    steps = [line.step for line in used if line.kind is FoundKind.STEP]
    assert np.abs(np.array(steps) - ground.KERB_FACE).max() < 0.015


def demo_lines():
    """Kinds and courses of the lines of the demo's ground, where they are as high and deep as the bars ask."""
    at = np.arange(6.0, 92.0, 0.5)  # a pass crosses on either side
    result = {}
    for name, side, face in (("left kerb", 1, ground.FACE_LEFT), ("right kerb", -1, ground.FACE_RIGHT)):
        high = at[np.interp(at, *face) >= 0.08]
        high = high[high < 43] if side > 0 else high  # on the left up to the field gate
        xy = ground.lane_xy(high, side * (ground.HALF_WIDTH + ground.KERB_OFFSET / 2))
        result[name] = ((FoundKind.STEP,), np.column_stack(ground.to_grid(*xy)))
    x = np.arange(15.0, 83.0, 0.5)
    edges = (FoundKind.TOP, FoundKind.RIDGE)
    for name, kinds, aside in (
        ("ditch bottom", (FoundKind.VALLEY, FoundKind.TOE), 0.0),
        ("left edge", edges, ground.DITCH_HALF_WIDTH),
        ("right edge", edges, -ground.DITCH_HALF_WIDTH),
    ):
        result[name] = (kinds, np.column_stack(ground.to_grid(x, ground.ditch_line(x) + aside)))
    return result
