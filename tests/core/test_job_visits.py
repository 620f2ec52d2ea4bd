"""Another visit is added to a job: told, not mixed in unasked; by the user's word its ground counts, here or there."""

from __future__ import annotations

import csv
import json
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from test_job_file import products

from plugin.core.__main__ import main
from plugin.core.contours.lines import ContourOptions
from plugin.core.earthwork.surveys import OFFSET_FOUND
from plugin.core.handover.mesh import read_2dm
from plugin.core.job.job_file import read_job, save_choices
from plugin.core.job.keeping import out_of_date
from plugin.core.job.run import compute, continue_job, run_job
from plugin.core.job.settings import JobSettings, Visit
from plugin.core.job.visits import VisitWords, with_visits
from plugin.core.job.volumes import VolumeQuestion
from plugin.core.messages import SurveyError
from plugin.core.points.decided import PointDecision
from plugin.core.report.summary import summary
from plugin.core.surface.locate import heights_at

ORIGIN = np.array([500000.0, 5800000.0])
OFFSET, SIGMA = 0.03, 0.008
HEAP = (25.0, 18.0, 8.0)  # middle and foot of a cone cut off flat, metres


def old_ground(x, y):
    return 100 + 0.03 * x + 0.4 * np.sin(y / 9)


def new_ground(x, y):
    """The same with a heap of 0.8 m, closed form."""
    east, north, foot = HEAP
    return old_ground(x, y) + 0.8 * np.clip((foot - np.hypot(x - east, y - north)) / 3, 0, 1)


def walk(file, ground, seed, off=0.0, box=(0, 36, 0, 36), day=0, code=""):
    """A walk to and fro: a point every half metre, passes 2.5 m apart; the first pass has a ``code``."""
    random, rows = np.random.default_rng(seed), ["name,easting,northing,height,code,time"]
    west, east, south, north = box
    for k, y in enumerate(np.arange(south, north + 0.1, 2.5)):
        for x in np.arange(west, east + 0.1, 0.5)[:: 1 if k % 2 == 0 else -1]:
            at = x + random.normal(0, 0.04), y + random.normal(0, 0.1)
            height = ground(*at) + off + random.normal(0, SIGMA)
            moment = np.datetime64("2026-03-02T08:00:00") + np.timedelta64(86400 * day + len(rows), "s")
            own = code if y == 17.5 else ""
            east_north = f"{ORIGIN[0] + at[0]:.3f},{ORIGIN[1] + at[1]:.3f}"
            rows.append(f"{file.stem}{len(rows)},{east_north},{height:.3f},{own},{moment}Z")
    file.write_text("\n".join(rows) + "\n", encoding="utf-8")
    return file


@pytest.fixture(scope="module")
def site(tmp_path_factory):
    """Two visits, the later one 3 cm too high; and polygons of the western half of the heap."""
    folder = tmp_path_factory.mktemp("site")
    walk(folder / "first.csv", old_ground, 1)
    walk(folder / "later.csv", new_ground, 2, OFFSET, (8, 36, 4, 34), 40)
    (folder / "copy of first.csv").write_bytes((folder / "first.csv").read_bytes())
    ring = np.add(ORIGIN, [(12, 6), (25, 6), (25, 30), (12, 30), (12, 6)]).tolist()
    shape = {"type": "Polygon", "coordinates": [ring]}
    named = {"type": "name", "properties": {"name": "urn:ogc:def:crs:EPSG::25832"}}
    told = {"type": "FeatureCollection", "crs": named,
            "features": [{"type": "Feature", "properties": {}, "geometry": shape}]}  # fmt: skip
    (folder / "west.geojson").write_text(json.dumps(told), encoding="utf-8")
    return folder


def settings_of(site, out, *visits, **more):
    first = more.pop("survey", site / "first.csv")
    return JobSettings(first, out, ContourOptions(0.25), "EPSG:25832", find_lines=False, visits=visits, **more)


@pytest.fixture(scope="module")
def alone(site, tmp_path_factory):
    """Each visit as a job of its own."""
    found = {}
    for name in ("first", "later"):
        found[name] = tmp_path_factory.mktemp(name)
        run_job(settings_of(site, found[name], survey=site / f"{name}.csv"))
    return found


@pytest.fixture(scope="module")
def told(site, tmp_path_factory):
    out = tmp_path_factory.mktemp("told")
    return out, run_job(settings_of(site, out, Visit(site / "later.csv")))


@pytest.fixture(scope="module")
def counts(site, tmp_path_factory):
    out = tmp_path_factory.mktemp("counts")
    return out, run_job(settings_of(site, out, Visit(site / "later.csv", "all")))


def places(low=(10, 6), high=(34, 32), number=3000):
    random = np.random.default_rng(3)
    return random.uniform(low, high, (number, 2))


def off_truth(tin, ground, at):
    return heights_at(tin, at + ORIGIN) - ground(*at.T)


# Told, not applied


def test_a_visit_is_told_before_all_else_and_not_mixed_in(told, alone):
    out, result = told
    first = summary(result, out)[1]
    assert first.startswith("Visit 2, later.csv, is not in this surface: over ")
    assert "--new-ground" in first
    report = (out / "report.html").read_text(encoding="utf-8")
    lead = report[report.index("<ul>") : report.index("</ul>")]
    assert "Visit 2, later.csv, is not in this surface" in lead[:400]
    before, now = products(alone["first"]), products(out)
    for name in ("surface.2dm", "points.csv", "contours.geojson", "findings.csv", "survey_findings.csv"):
        assert now[name] == before[name], name


def test_the_offset_is_told_with_its_doubt_and_the_heap_with_its_size(told):
    change = told[1].visits.later[0].change
    assert abs(change.offset - OFFSET) < change.half < 0.015
    assert OFFSET_FOUND.code in [said.text.code for said in told[1].remarks]
    # A frustum in closed form: radii 8 and 5 m, 0.8 m high.
    foot = HEAP[2]
    volume = np.pi * 0.8 / 3 * (foot**2 + foot * (foot - 3) + (foot - 3) ** 2)
    assert change.fill == pytest.approx(volume, rel=0.05)
    assert change.cut < 0.01 * volume
    assert 0.85 * np.pi * foot**2 < change.changed < 1.2 * np.pi * foot**2


def test_every_visit_keeps_its_surface_as_a_job_of_its_own_makes_it(told, counts, alone):
    for out, _ in (told, counts):
        for number, name in ((1, "first"), (2, "later")):
            for ending in ("2dm", "prj"):
                own = (out / f"surface_visit_{number}.{ending}").read_bytes()
                assert own == (alone[name] / f"surface.{ending}").read_bytes()
        assert (out / "points_visit_2.csv").read_bytes() == (alone["later"] / "points.csv").read_bytes()
        assert (out / "rejects_visit_2.csv").is_file()


def test_surfaces_of_visits_can_be_compared(told, site, tmp_path):
    """The tool for volumes between surveys says of them what the job says."""
    out, result = told
    asked = VolumeQuestion(since=out / "surface_visit_1.2dm", other_sigma=0.015, other_drift=0.0)
    answer = asked.answer(compute(settings_of(site, tmp_path, survey=site / "later.csv")), lambda *_: None)
    change = result.visits.later[0].change
    assert answer.study.doubt.fill.value == pytest.approx(change.fill, rel=0.03)
    assert answer.study.settling.unchanged.offset == pytest.approx(change.offset, abs=0.002)


# By the user's word


def test_new_ground_supersedes_where_it_differs(counts):
    out, result = counts
    at = places()
    off = off_truth(result.surface.tin, new_ground, at)
    smooth = np.abs(np.hypot(*(at - HEAP[:2]).T) - 6.5) > 3  # off the edges of the heap, which passes cut
    assert np.abs(off[smooth]).max() < 5 * SIGMA
    assert abs(off[smooth].mean()) < 0.005
    with open(out / "points.csv", encoding="utf-8") as file:
        rows = list(csv.DictReader(file))
    assert {row["source"] for row in rows} == {"first.csv", "later.csv"}
    gone = [row for row in rows if row["reason"] == "superseded"]
    assert len(gone) > 100
    assert {(row["source"], row["status"]) for row in gone} == {("first.csv", "rejected")}
    place = np.array([[float(row["easting"]), float(row["northing"])] for row in gone]) - ORIGIN
    # Between two passes the foot of the heap is drawn out, up to their distance of 2.5 m.
    assert np.mean(np.hypot(*(place - HEAP[:2]).T) < HEAP[2] + 2.5) > 0.98
    assert len(rows) == result.account.points
    said = [str(one) for one in result.statements]
    assert any(one.startswith("later.csv: -0.0") and "added to the heights" in one for one in said)
    report = (out / "report.html").read_text(encoding="utf-8")
    assert "superseded by newer ground" in report
    assert "Visit 2, later.csv, counts wherever it was walked" in report


def test_within_polygons_only(site, tmp_path, alone):
    result = run_job(settings_of(site, tmp_path, Visit(site / "later.csv", str(site / "west.geojson"))))
    west = places((14, 8), (23, 28))
    flat = np.abs(np.hypot(*(west - HEAP[:2]).T) - 6.5) > 3
    assert np.abs(off_truth(result.surface.tin, new_ground, west)[flat]).max() < 5 * SIGMA
    east, before = places((28, 6), (35, 34)), read_2dm(alone["first"] / "surface.2dm", None)
    heights = [heights_at(tin, east + ORIGIN) for tin in (result.surface.tin, before)]
    np.testing.assert_allclose(*heights, atol=1e-3)
    assert "counts within the polygons of west.geojson" in summary(result, tmp_path)[1]


def test_a_known_offset_goes_before_the_one_found(site, tmp_path):
    visit = Visit(site / "later.csv", "all", 0.0)
    result = compute(settings_of(site, tmp_path, visit, check=False))
    used = result.points.select(result.points.used)
    assert result.visits.later[0].change.offset == 0.0
    new = used.select(used.extra["source"] == "later.csv")
    read = result.visits.later[0].points
    np.testing.assert_array_equal(new.height, read.select(read.used).height)


def test_a_hand_on_an_old_point_goes_before_new_ground(site, tmp_path, counts):
    points = counts[1].points
    gone = np.flatnonzero((points.status == 2) & (points.extra["source"] == "first.csv"))[0]
    line, name = int(points.source_line[gone]), str(points.name[gone])
    kept = PointDecision(line, "flagged", "by_hand", name, "first.csv")
    later = PointDecision(5, "rejected", "by_hand", "later4", "later.csv")
    settings = settings_of(site, tmp_path, Visit(site / "later.csv", "all"), decided=(kept, later), check=False)
    result = compute(settings)
    assert result.points.used[gone]
    own = result.points.select(result.points.extra["source"] == "later.csv")
    assert own.status[own.source_line == 5].tolist() == [2]
    assert not any("no longer" in str(said) for said in result.remarks)


def test_a_coded_line_ends_before_newer_ground(site, tmp_path):
    """A kerb through the heap would hold the new ground down to straight lines between its ends."""
    first = walk(tmp_path / "coded.csv", old_ground, 1, code="BL")
    settings = settings_of(site, tmp_path / "out", Visit(site / "later.csv", "all"), survey=first, check=False)
    result = compute(settings)
    lines = result.linework.constraints.lines
    assert len(lines) >= 2
    middle = np.array(HEAP[:2]) + ORIGIN
    assert min(np.hypot(*(line.xyz[:, :2] - middle).T).min() for line in lines) > HEAP[2] - 1.5
    assert not any(line.bridges for line in lines)
    top = places((23, 16), (27, 20), 200)
    assert np.abs(off_truth(result.surface.tin, new_ground, top)).max() < 6 * SIGMA


def test_visits_on_other_ground_only_extend(site, tmp_path):
    apart = walk(tmp_path / "apart.csv", old_ground, 4, 0.0, (60, 80, 0, 20), 3)
    result = compute(settings_of(site, tmp_path, Visit(apart, "all"), check=False))
    later = result.visits.later[0]
    assert (later.change.common, later.superseded) == (0.0, 0)
    assert "has no ground in common" in " ".join(str(said) for said in result.quality.claims.against)


def test_a_third_visit_is_compared_with_the_second_where_that_counts(site, tmp_path):
    third = walk(tmp_path / "third.csv", new_ground, 5, 0.0, (8, 36, 4, 34), 80)
    visits = Visit(site / "later.csv", "all"), Visit(third)
    result = compute(settings_of(site, tmp_path, *visits, check=False))
    change = result.visits.later[1].change
    assert change.changed < 0.05 * change.common
    assert [one.split(",")[0] for one in summary(result, tmp_path)[1:3]] == ["Visit 2", "Visit 3"]
    assert len(result.visits.surfaces) == 3


# One job by every door


def test_added_by_the_command_line_and_never_lost(site, tmp_path, capsys, counts):
    out, words = tmp_path / "out", ["--crs=EPSG:25832", "--interval=0.25", "--found-lines=no"]
    survey = [str(site / "first.csv"), f"--out={out}", *words]
    assert main(survey) == 0
    assert main(["--job", str(out), "--add", str(site / "later.csv")]) == 0
    assert read_job(out).settings.visits == (Visit(site / "later.csv"),)
    assert main(["--job", str(out), "--new-ground", "all"]) == 0
    assert products(out) == products(counts[0])
    capsys.readouterr()
    assert main(survey) == 0  # all choices given anew: the visit and the word on it stay
    assert "Visit 2, later.csv, counts" in capsys.readouterr().out
    assert products(out) == products(counts[0])
    assert main(["--job", str(out), "--new-ground", "none"]) == 0
    assert "is not in this surface" in capsys.readouterr().out


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["--new-ground", "all"], "has only one"),
        (["--visit-offset", "0.1"], "has only one"),
        (["--add", "{site}/first.csv"], "is part of the job already"),
        (["--add", "{site}/copy of first.csv"], "is part of the job already"),
        (["--add", "{site}/nothing.csv"], "there is no such file"),
        (["--add", "{site}/later.csv", "--new-ground", "nowhere.geojson"], "say all, none, or a GeoJSON file"),
        (["--add", "{site}/later.csv", "--crs", "EPSG:25833"], "cannot be given too"),
    ],
)
def test_words_that_cannot_be(alone, site, words, said, capsys):
    before = (alone["first"] / "job.json").read_bytes()
    assert main(["--job", str(alone["first"]), *(word.format(site=site) for word in words)]) == 2
    assert said in capsys.readouterr().err
    assert (alone["first"] / "job.json").read_bytes() == before


def test_visits_are_said_of_a_job(capsys):
    assert main(["survey.csv", "--crs=EPSG:25832", "--interval=1", "--out=x", "--add", "later.csv"]) == 2
    assert "--add is said of a job that is there already" in capsys.readouterr().err


def test_a_visit_marks_what_depends_on_it_and_nothing_else(told, alone, site):
    out, _ = told
    record = read_job(out)
    assert out_of_date(record, out) == []
    visit = replace(record.settings.visits[0], new_ground="all")
    after = ["lines", "surface", "quality", "contours", "findings", "sheet", "thin", "dem", "files"]
    changed = replace(record, settings=replace(record.settings, visits=(visit,)))
    assert out_of_date(changed, out) == ["visits", *after]
    without = read_job(alone["first"])
    assert "visits" not in without.stages
    added = with_visits(without.settings, VisitWords((site / "later.csv",)))
    assert out_of_date(replace(without, settings=added), alone["first"]) == ["visits", *after]


def test_a_file_that_is_corrected_is_taken_anew(site, tmp_path):
    later = tmp_path / "later.csv"
    later.write_bytes((site / "later.csv").read_bytes())
    out = tmp_path / "out"
    run_job(settings_of(site, out, Visit(later, "all"), check=False))
    walk(later, new_ground, 2, 0.05, (8, 36, 4, 34), 40)
    again = continue_job(out)
    assert again.visits.later[0].change.offset == pytest.approx(0.05, abs=0.01)
    anew = tmp_path / "anew"
    run_job(settings_of(site, anew, Visit(later, "all"), check=False))
    assert products(out) == products(anew)


def test_polygons_and_words_come_back_from_the_file(site, tmp_path):
    visit = Visit(site / "later.csv", str(site / "west.geojson"), -0.01)
    save_choices(settings_of(site, tmp_path / "job", visit))
    kept = read_job(tmp_path / "job").settings.visits[0]
    assert (kept.offset, Path(kept.new_ground).resolve()) == (-0.01, (site / "west.geojson").resolve())


def test_two_files_of_one_name_are_told_apart(site, tmp_path):
    (tmp_path / "other").mkdir()
    same = tmp_path / "other" / "first.csv"
    same.write_bytes((site / "later.csv").read_bytes())
    result = compute(settings_of(site, tmp_path, Visit(same, "all"), check=False))
    assert set(result.points.extra["source"].tolist()) == {"first.csv", "first.csv (2)"}


def test_files_of_one_name_are_not_taken_for_one_that_changed(site, tmp_path, capsys):
    (tmp_path / "other").mkdir()
    same, out = tmp_path / "other" / "first.csv", tmp_path / "out"
    same.write_bytes((site / "later.csv").read_bytes())
    run_job(settings_of(site, out, check=False))
    assert main(["--job", str(out), "--add", str(same)]) == 0
    assert main(["--job", str(out)]) == 0
    assert "holds something else" not in capsys.readouterr().out
    walk(same, new_ground, 9, OFFSET, (8, 36, 4, 34), 40)
    assert main(["--job", str(out)]) == 0
    assert f"{same} holds something else" in capsys.readouterr().out


def test_a_decision_on_a_visit_that_comes_later_is_no_longer_told_as_lost(site, tmp_path):
    """The same bytes as from nothing, the report's remarks too."""
    decisions = tmp_path / "decisions.csv"
    decisions.write_text("source,line,status,reason\nlater.csv,30,rejected,by_hand\n", encoding="utf-8")
    out, anew = tmp_path / "out", tmp_path / "anew"
    before = run_job(settings_of(site, out, check=False, decisions=decisions))
    assert "no effect" in " ".join(str(said) for said in before.remarks)
    later = continue_job(out, visits=VisitWords((site / "later.csv",)))
    assert "no effect" not in " ".join(str(said) for said in later.remarks)
    run_job(settings_of(site, anew, Visit(site / "later.csv"), check=False, decisions=decisions))
    assert products(out) == products(anew)


def test_polygons_where_nothing_was_walked_are_refused(site, tmp_path):
    told = json.loads((site / "west.geojson").read_text(encoding="utf-8"))
    ring = told["features"][0]["geometry"]["coordinates"]
    told["features"][0]["geometry"]["coordinates"] = [[[x + 500.0, y] for x, y in ring[0]]]
    area = tmp_path / "outside.geojson"
    area.write_text(json.dumps(told), encoding="utf-8")
    with pytest.raises(SurveyError, match="has no point in these polygons"):
        compute(settings_of(site, tmp_path, Visit(site / "later.csv", str(area)), check=False))


def test_nothing_is_vouched_for_where_a_visit_hangs_on_nothing(site, tmp_path):
    apart = walk(tmp_path / "apart.csv", old_ground, 4, 0.0, (60, 80, 0, 20), 3)
    result = compute(settings_of(site, tmp_path, Visit(apart, "all")))
    said = summary(result, tmp_path)
    assert "has no ground in common" in said[2]
    assert any("No accuracy class" in line for line in said)
    alone = compute(settings_of(site, tmp_path, Visit(apart)))
    assert not any("No accuracy class" in line for line in summary(alone, tmp_path))


def test_a_visit_in_another_crs_is_refused_or_brought_in(site, tmp_path):
    """It is read as the first file is; what lies outside the CRS asks, as anywhere."""
    far = tmp_path / "far.csv"
    far.write_text((site / "later.csv").read_text().replace(",5800", ",15800"), encoding="utf-8")
    with pytest.raises(SurveyError):
        compute(settings_of(site, tmp_path, Visit(far, "all"), check=False))


def test_a_visit_that_cannot_be_read_names_what_to_do_with_it(site, tmp_path, alone, capsys):
    """Options that mend a survey are none of a job that is there: the refusal says so."""
    told = (site / "later.csv").read_text(encoding="utf-8").replace("easting,northing", "latitude,longitude", 1)
    (tmp_path / "wrong.csv").write_text(told, encoding="utf-8")
    before = (alone["first"] / "job.json").read_bytes()
    assert main(["--job", str(alone["first"]), "--add", str(tmp_path / "wrong.csv")]) == 2
    said = capsys.readouterr().err
    assert "wrong.csv" in said
    assert "write its file with the columns, units and CRS of the first" in said
    assert (alone["first"] / "job.json").read_bytes() == before


def test_the_same_heights_once_more_are_no_second_survey(site, tmp_path):
    """Another file with the heights of the first: told as that, not as ground that does not agree."""
    told = (site / "first.csv").read_text(encoding="utf-8").replace("first", "again")
    (tmp_path / "again.csv").write_text(told, encoding="utf-8")
    result = compute(settings_of(site, tmp_path / "job", Visit(tmp_path / "again.csv")))
    (change,) = [one.change for one in result.visits.later]
    assert [one.text.code for one in change.messages] == ["earthwork.alike"]
    assert change.changed == 0.0
