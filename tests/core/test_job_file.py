"""A job is its folder: its choices and decisions come back from the file, and a rerun does only what changed."""

from __future__ import annotations

import json
import os
import re
import shutil
from dataclasses import fields, replace
from pathlib import Path

import numpy as np
import pytest

from plugin.core.__main__ import main
from plugin.core.arguments.parser import make_parser
from plugin.core.arguments.settings import job_settings
from plugin.core.contours.lines import ContourOptions
from plugin.core.job.fingerprint import FileDigests
from plugin.core.job.job_file import JobRecord, as_kept, read_job, save_choices, write_job
from plugin.core.job.keeping import out_of_date
from plugin.core.job.kept import Keeper, NotKept
from plugin.core.job.run import compute, continue_job, run_job
from plugin.core.job.settings import JobSettings
from plugin.core.job.stages import STAGES
from plugin.core.messages import SurveyError
from plugin.core.points.decided import PointDecision, PointRow, after_edit
from plugin.core.progress import Cancelled
from plugin.core.surface.build import SurfaceOptions

DEMO = Path(__file__).resolve().parents[2] / "test_data" / "demo"
MOMENT = re.compile(rb' date="[^"]*" time="[^"]*"')


def lines(side=14, high=0.0):
    found = ["name,easting,northing,height,code"]
    for i in range(side):
        for j in range(side):
            x, y = 500000.0 + 1.5 * i, 5800000.0 + 1.5 * j
            found.append(f"p{i * side + j},{x:.3f},{y:.3f},{100 + high + 0.05 * i + np.sin(j / 3):.3f},")
    return [*found, f"far,499994.000,5800009.000,{100 + high:.3f},"]


def survey(folder, name="survey.csv", **how):
    folder.mkdir(parents=True, exist_ok=True)
    (folder / name).write_text("\n".join(lines(**how)) + "\n", encoding="utf-8")
    return folder / name


def settings_of(file, out, **more):
    return JobSettings(file, out, ContourOptions(0.1), "EPSG:25832", check=False, find_lines=False, **more)


def products(folder):
    """Contents of the files of a job by their names; without the moment that LandXML asks for."""
    files = {path.name: path.read_bytes() for path in sorted(folder.iterdir()) if path.is_file()}
    files.pop("job.json")
    return {name: MOMENT.sub(b"", content) for name, content in files.items()}


def stages_run(settings, **how):
    """The stages that a run does, told by its progress."""
    told = []
    run_job(settings, lambda fraction, stage: told.append(stage), **how)
    return set(told)


# The file


WORDS = """
--crs EPSG:25832 --interval 0.25 --interval-unit m --base 0.1 --index-every 4 --columns=name,easting,northing
--unit m --height-unit m --units-from options --no-value=-99,x --heights-of ground --comment # --delimiter ,
--decimal . --encoding utf-8 --code-words B,E,C,A --code-separator + --arc-tolerance 0.02 --accept one --accept two
--correct swapped --shift-heights 12:+0.2,30:-0.1 --near 51.45N,9.0E --source-crs EPSG:4326
--heights orthometric --heights-are ellipsoidal
--geoid 47.3 --control-fit space --control-heights plane --leave-out A1 --ground-to-grid --ground-origin 1,2
--ground-factor 0.9996 --ground-shift=-5,6 --check control --tilt-compensated yes --keep-flagged --accuracy-class 5
--max-gap 4 --rim-edge 10 --rim-radius 7 --rim-passes 1.5 --rim-angle 165 --crossings mean --crossing-tolerance 0.1
--smooth 0.25 --calm 0.01 --scale 250 --dem 0.5 --thin 0.03 --landxml --dxf --water --full-ponds --pond-depth 0.01
--rain 2.5 --rain-unit in/h --runoff 0.4 --pad pad.geojson --pad-level 12.5 --pad-fall 2 --pad-towards 90 --cut-slope 3
--fill-slope 2.5 --corners mitre --earth-factor 0.9 --surplus -4 --line line.geojson --rules r.csv --speeds s.csv
--stations 5 --start-station 1+250 --equations 1+300=1+350 --lane 2.5 --section-width 9 --paper A3 --against d.2dm
--since e.2dm --volume-level 99.5 --regions g.geojson --depths 0.1,0.5 --volume-line line.geojson --volume-step 5
--volume-width 15 --offset 0.01 --offset-sigma 0.02 --other-sigma 0.03 --other-drift 0.01 --basin 500001,5800002
--decisions d.csv --codes c.csv --edits e.json --check-points k.csv --found-lines f.geojson --angles dd.mmss
--boundary b.geojson --breaklines w.geojson --soft-lines p.geojson --voids v.geojson
--pole-height 2 --antenna-offset 0.1 --control k.csv --control-as mirrored --base-was 1,2,3 --base-is 2,3,4 --layer L
"""


def test_every_choice_comes_back_from_the_file(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    asked = job_settings(make_parser().parse_args(["a.csv", "b.csv", "--out", "job", *WORDS.split()]))
    Path("job").mkdir()
    usual = JobSettings(Path("a.csv"), Path("job"), ContourOptions(0.25))
    untouched = {each.name for each in fields(asked) if getattr(asked, each.name) == getattr(usual, each.name)}
    assert untouched <= {"survey", "out", "check", "use_codes", "find_lines", "others", "decided", "visits"}
    asked = replace(asked, others=(Path("plan.pdf"),), decided=(PointDecision(7, "rejected", "stray", "p7", "a.csv"),))
    write_job(JobRecord(asked, "de"), Path("job"))
    found = read_job(Path("job"))
    assert found.language == "de"
    for each in fields(asked):
        assert getattr(found.settings, each.name) == getattr(asked, each.name), each.name


def test_a_folder_that_moves_takes_its_files_along(tmp_path):
    settings = settings_of(survey(tmp_path / "site"), tmp_path / "site" / "job", dem=1.0)
    run_job(settings)
    shutil.move(tmp_path / "site", tmp_path / "elsewhere")
    record = read_job(tmp_path / "elsewhere" / "job")
    assert record.settings.survey == tmp_path / "elsewhere" / "survey.csv"
    assert out_of_date(record, tmp_path / "elsewhere" / "job") == []


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("{", "not the file of a job"),
        ("[]", "format"),
        ('{"format": "hummock job", "version": 2}', "version 2"),
        ('{"format": "hummock job", "version": 0}', '"version" must be 1'),
        ('{"format": "hummock job", "version": "1"}', '"version" must be 1'),
        ('{"format": "hummock job", "version": 1}', "choices"),
        ('{"format": "hummock job", "version": 1, "choices": {"crs": "EPSG:25832", "crs": "x"}}', '"crs" stands twice'),
        ('{"format": "hummock job", "version": 1, "choices": {}, "stages": [1]}', '"stages" must be an object'),
        ('{"format": "hummock job", "version": 1, "choices": {}, "stages": {"read": 1}}', 'each of "stages"'),
        ('{"format": "hummock job", "version": 1, "choices": {}, "products": 1}', '"products" must be an object'),
        ('{"format": "hummock job", "version": 1, "choices": {"survey": "a.csv"}}', "'contours' is missing"),
        (
            '{"format": "hummock job", "version": 1, "choices": {"survey": 1, "contours": {"interval": 1}}}',
            "choices.survey: text is expected",
        ),
        (
            '{"format": "hummock job", "version": 1, "choices": {"survey": "a", "contours": {"interval": "x"}}}',
            "choices.contours.interval: a number",
        ),
        (
            '{"format": "hummock job", "version": 1, "choices": {"survey": "a", "colour": 1, "contours": {}}}',
            "there is no 'colour'",
        ),
        (
            '{"format": "hummock job", "version": 1, "choices": {"survey": "a", "contours": {"interval": 1}, '
            '"questions": [{"question": "os.system"}]}}',
            "must be one of water",
        ),
    ],
)
def test_a_file_that_is_not_understood_is_refused_with_the_place(tmp_path, text, said, capsys):
    (tmp_path / "job.json").write_text(text)
    assert main(["--job", str(tmp_path)]) == 2
    (line,) = capsys.readouterr().err.splitlines()
    assert said in line
    assert "job.json" in line


def test_going_on_with_a_job_takes_no_other_choices(tmp_path, capsys):
    assert main(["--job", str(tmp_path)]) == 2
    assert "is not the folder of a job" in capsys.readouterr().err
    assert main(["--job", str(tmp_path), "--interval", "1"]) == 2
    assert "--interval cannot be given too" in capsys.readouterr().err


# Running again


def test_a_job_that_holds_is_only_read(tmp_path):
    settings = settings_of(survey(tmp_path), tmp_path / "job", dem=1.0)
    first = run_job(settings)
    files = {path: path.stat().st_mtime_ns for path in (tmp_path / "job").iterdir() if path.suffix != ".json"}
    assert stages_run(settings) == set()
    assert {path: path.stat().st_mtime_ns for path in files} == files
    again = continue_job(tmp_path / "job")
    assert again.files == first.files
    assert np.array_equal(again.surface.tin.vertices, first.surface.tin.vertices)
    assert [str(one) for one in again.remarks] == [str(one) for one in first.remarks]


#: A change of the choices, and the stages that a run does for it.
CHANGES = {
    "interval": (lambda one, folder: replace(one, contours=ContourOptions(0.2)), {"contours", "sheet"}),
    "rim": (
        lambda one, folder: replace(one, surface=SurfaceOptions(max_rim_edge=3.0)),
        {"surface", "quality", "contours", "findings", "sheet", "thin"},
    ),
    "cell": (lambda one, folder: replace(one, dem=2.0), set()),
    "thin": (lambda one, folder: replace(one, thin=0.05), {"thin"}),
    "boundary": (
        lambda one, folder: replace(one, boundary=Path(folder, "b.geojson")),
        {"surface", "quality", "contours", "findings", "sheet", "thin"},
    ),
    "gaps": (lambda one, folder: replace(one, max_gap=1.0), {"quality"}),
    "same points, another mark": (lambda one, folder: replace(one, delimiter=","), {"points"}),
    "checks": (lambda one, folder: replace(one, check=True), {"points", "check"}),
}
#: What a run does in every case, and what stands after the check, whose outcome may be the same.
ALWAYS, LATER = (
    {"files", "report"},
    {"features", "surface", "lines", "quality", "contours", "findings", "sheet", "thin"},
)


@pytest.mark.parametrize("name", CHANGES)
def test_a_change_does_again_what_depends_on_it_and_no_more(tmp_path, name):
    change, expected = CHANGES[name]
    settings = settings_of(survey(tmp_path), tmp_path / "job", dem=1.0, thin=0.02)
    from plugin.core.contours.sheet import SheetOptions

    settings = replace(settings, sheet=SheetOptions(0.1))
    run_job(settings)
    ring = [[500003.2, 5800003.1], [500015.1, 5800003.4], [500009.2, 5800015.3], [500003.2, 5800003.1]]
    system = {"type": "name", "properties": {"name": "EPSG:25832"}}
    (tmp_path / "b.geojson").write_text(json.dumps({"type": "Polygon", "coordinates": [ring], "crs": system}))
    changed = change(settings, tmp_path)
    done = stages_run(changed)
    if name == "checks":
        assert expected - {"points"} <= done <= expected | LATER | ALWAYS  # what the check leaves may be the same
    elif name == "same points, another mark":
        assert "surface" not in done
    else:
        assert done - ALWAYS - {"lines"} == expected
    run_job(replace(changed, out=tmp_path / "new"))
    one, other = products(tmp_path / "job"), products(tmp_path / "new")
    assert {key for key in {*one, *other} if one.get(key) != other.get(key)} == set()


def test_the_demo_changed_step_by_step_is_what_a_run_from_nothing_gives(tmp_path):
    words = ["--check-points", f"{DEMO}/check_points.csv", "--water", "--inlets", f"{DEMO}/inlets.csv", "--landxml"]
    words += ["--line", f"{DEMO}/centreline.geojson", "--since", f"{DEMO}/before.2dm", "--other-sigma", "0.015"]
    main([f"{DEMO}/survey.csv", "--crs", "EPSG:25832", "--interval", "0.25", "--out", f"{tmp_path}/job", *words])
    steps = [
        ["--interval", "0.5", *words],
        ["--interval", "0.5", *words[2:], "--rim-edge", "12"],
        ["--interval", "0.25", *words[2:], "--keep-flagged", "--smooth", "0.2"],
    ]
    for number, step in enumerate(steps):
        told = ["--crs", "EPSG:25832", *step]
        for out in ("job", f"new{number}"):
            assert main([f"{DEMO}/survey.csv", *told, "--out", f"{tmp_path}/{out}"]) == 0
        one, other = products(tmp_path / "job"), products(tmp_path / f"new{number}")
        differ = {key for key in {*one, *other} if one.get(key) != other.get(key)}
        assert differ <= {"checksums.sha256", "report.html"}, "they hold the sum of a LandXML file, with its moment"


def test_another_content_under_the_same_name_is_seen(tmp_path):
    file = survey(tmp_path)
    settings = settings_of(file, tmp_path / "job")
    run_job(settings)
    stamp = os.stat(file)
    survey(tmp_path, high=1.0)
    os.utime(file, ns=(stamp.st_atime_ns, stamp.st_mtime_ns))
    assert "read" in out_of_date(read_job(tmp_path / "job"), tmp_path / "job")
    result = run_job(settings)
    assert result.surface.tin.height_range[0] >= 100.0


@pytest.mark.parametrize("harm", ["gone", "changed", "half"])
def test_a_product_or_a_kept_result_that_was_harmed_is_made_anew(tmp_path, harm):
    settings = settings_of(survey(tmp_path), tmp_path / "job")
    run_job(settings)
    whole = products(tmp_path / "job")
    for path in (tmp_path / "job" / "contours.geojson", tmp_path / "job" / "stages" / "surface.npz"):
        if harm == "gone":
            path.unlink()
        else:
            content = path.read_bytes()
            path.write_bytes(content[: len(content) // 2] if harm == "half" else content.replace(b"0", b"7", 5))
    run_job(settings)
    assert products(tmp_path / "job") == whole


def test_what_is_no_longer_asked_for_goes_unless_somebody_changed_it(tmp_path):
    settings = settings_of(survey(tmp_path), tmp_path / "job", dem=1.0, thin=0.05)
    run_job(settings)
    with open(tmp_path / "job" / "surface_thin.2dm", "a", encoding="utf-8") as stream:
        stream.write("# mine\n")
    run_job(replace(settings, dem=None, thin=None))
    left = set(os.listdir(tmp_path / "job"))
    assert "dem.asc" not in left
    assert "surface_thin.2dm" in left


@pytest.mark.parametrize("stop_at", np.linspace(0.05, 0.97, 8).round(3).tolist())
def test_a_run_that_is_stopped_goes_on_where_it_was(tmp_path, stop_at):
    settings = settings_of(survey(tmp_path), tmp_path / "job", dem=1.0, thin=0.05)
    run_job(replace(settings, out=tmp_path / "whole"))

    def stop(fraction, stage):
        if fraction >= stop_at:
            raise Cancelled

    with pytest.raises(Cancelled):
        run_job(settings, stop)
    run_job(settings)
    assert products(tmp_path / "job") == products(tmp_path / "whole")


# Decisions


def test_decisions_of_a_job_stay_whatever_is_run(tmp_path):
    file = survey(tmp_path)
    settings = settings_of(file, tmp_path / "job", decided=(PointDecision(9, "rejected", "by_hand", "p7"),))
    assert run_job(settings).points.used.sum() == 14 * 14
    again = run_job(settings_of(file, tmp_path / "job", dem=1.0))
    assert again.points.used.sum() == 14 * 14
    assert "decision by hand that stands in" in " ".join(str(one) for one in again.remarks)
    assert read_job(tmp_path / "job").settings.decided == settings.decided


def test_a_decision_finds_its_point_in_a_file_that_was_corrected(tmp_path):
    file = survey(tmp_path)
    decided = (PointDecision(9, "rejected", "by_hand", "p7"), PointDecision(20, "flagged", "by_hand", "p18"))
    settings = settings_of(file, tmp_path / "job", decided=decided)
    run_job(settings)
    rows = lines()
    file.write_text("\n".join([rows[0], *rows[3:9], *rows[9:]]) + "\n", encoding="utf-8")  # p0 and p1 are gone
    result = continue_job(tmp_path / "job")
    rejected = result.points.name[~result.points.used & (result.points.status == 2)]
    assert rejected.tolist() == ["p7"]
    assert "found again by the names" in " ".join(str(one) for one in result.remarks)
    file.write_text("\n".join([rows[0], *rows[10:]]) + "\n", encoding="utf-8")  # p7 is gone too
    result = continue_job(tmp_path / "job")
    assert "on p7 of line 9 no longer has a point" in " ".join(str(one) for one in result.remarks)
    assert read_job(tmp_path / "job").settings.decided == decided
    file.write_text("\n".join(rows) + "\n", encoding="utf-8")  # and there again
    result = continue_job(tmp_path / "job")
    assert result.points.name[result.points.status == 2].tolist() == ["p7"]


def test_the_word_of_the_job_goes_before_that_of_a_file(tmp_path):
    file = survey(tmp_path)
    (tmp_path / "d.csv").write_text("line,status,reason\n9,rejected,by_hand\n10,rejected,by_hand\n")
    own = (PointDecision(9, "used", "by_hand", "p7"),)
    result = compute(settings_of(file, tmp_path / "job", decisions=tmp_path / "d.csv", decided=own))
    assert result.points.name[~result.points.used].tolist() == ["p8"]


def test_decisions_on_points_of_several_files(tmp_path):
    one, other = survey(tmp_path), survey(tmp_path, "other.csv", high=0.2)
    own = (PointDecision(9, "rejected", "by_hand", "p7", "other.csv"),)
    rows = other.read_text().replace(",500", ",501").splitlines()
    other.write_text("\n".join(rows) + "\n")
    result = compute(settings_of(one, tmp_path / "job", more=(other,), decided=own))
    (at,) = np.flatnonzero(~result.points.used)
    assert str(result.points.extra["source"][at]).endswith("other.csv")
    assert result.points.source_line[at] == 9


def test_a_word_that_is_no_status_is_refused(tmp_path):
    own = (PointDecision(9, "perhaps", "by_hand", "p7"),)
    with pytest.raises(SurveyError, match="perhaps"):
        compute(settings_of(survey(tmp_path), tmp_path / "job", decided=own))


def test_a_value_that_is_not_a_number_is_not_written(tmp_path):
    words = ["a.csv", "--crs", "local", "--interval", "1", "--out", str(tmp_path), "--water", "--rain", "60"]
    asked = job_settings(make_parser().parse_args(words))
    write_job(JobRecord(asked), tmp_path)
    assert "NaN" not in (tmp_path / "job.json").read_text(encoding="utf-8")
    assert as_kept(asked) == read_job(tmp_path).settings


@pytest.mark.parametrize("moment", ["points", "surface", "files"])
def test_a_decision_taken_while_the_job_is_at_work_is_not_lost(tmp_path, moment):
    own = PointDecision(9, "rejected", "by_hand", "p7")
    settings = settings_of(survey(tmp_path), tmp_path / "job")
    run_job(settings)
    changed = replace(settings, surface=SurfaceOptions(max_rim_edge=3.0), delimiter=",")

    def decide(fraction, stage):
        if stage == moment and not read_job(tmp_path / "job").settings.decided:
            save_choices(replace(read_job(tmp_path / "job").settings, decided=(own,)))

    save_choices(changed)
    continue_job(tmp_path / "job", decide)
    record = read_job(tmp_path / "job")
    assert record.settings.decided == (own,)
    assert record.settings.surface.max_rim_edge == 3.0
    assert "decisions" in out_of_date(record, tmp_path / "job")
    points = continue_job(tmp_path / "job").points
    assert points.name[points.status == 2].tolist() == ["p7"]


def row(line=9, name="p7", status="used", check="used", file="", reason="by_hand"):
    return PointRow(line, name, file, status, reason, check)


def test_edits_of_a_layer_change_add_and_take_back_decisions():
    known = PointDecision(9, "rejected", "by_hand", "p7")
    other = PointDecision(20, "flagged", "by_hand", "gone")
    assert after_edit((known, other), [row(status="rejected")]) == (known, other), "nothing new"
    assert after_edit((known, other), [row()]) == (other,), "taken back"
    assert after_edit((known,), [row(status="flagged")]) == (PointDecision(9, "flagged", "by_hand", "p7"),)
    assert after_edit((), [row(status="rejected", check="rejected")]) == ()
    assert after_edit((), [row(check="rejected")]) == (PointDecision(9, "used", "by_hand", "p7"),)
    agreed = PointDecision(9, "rejected", "by_hand", "p7")
    assert after_edit((agreed,), [row(status="rejected", check="rejected")]) == (agreed,), "the checks agree now"
    assert after_edit((PointDecision(9, "rejected"),), [row(status="rejected")]) == (PointDecision(9, "rejected"),)
    of_file = PointDecision(9, "rejected", "by_hand", "p7", "a.csv")
    assert after_edit((of_file,), [row(file="b.csv", status="flagged")])[0] == of_file


# What is kept


def test_all_stages_of_a_job_with_everything_are_kept(tmp_path):
    words = ["--water", "--line", f"{DEMO}/centreline.geojson", "--since", f"{DEMO}/before.2dm"]
    words += ["--pad", f"{DEMO}/pad.geojson", "--pad-level", "balance", "--basin", "548322.8,5712471.2", "--dxf"]
    words += ["--smooth", "0.2", "--dem", "1", "--thin", "0.05", "--decisions", f"{DEMO}/decisions.csv"]
    main([f"{DEMO}/survey.csv", "--crs", "EPSG:25832", "--interval", "0.25", "--out", f"{tmp_path}/job", *words])
    record = read_job(tmp_path / "job")
    assert [stage.name for stage in STAGES if stage.name not in record.stages] == []
    assert [f"question {k}" in record.stages for k in range(1, 7)] == [True] * 6
    assert out_of_date(record, tmp_path / "job") == []
    told = []
    continue_job(tmp_path / "job", lambda fraction, stage: told.append(stage))
    assert told == []


def test_only_data_come_back(tmp_path):
    keeper, path = Keeper(), tmp_path / "r.npz"
    with pytest.raises(TypeError, match="never kept"):
        keeper.write("r", (1, print), path)
    assert not path.exists()
    for name in ("os:system", "job.run:run_job", "files:Path", "points.pointset:np.ndarray", "..os:system"):
        tree = json.dumps({"value": {"o": name, "v": [], "f": []}, "gives": "x", "digests": [""]}).encode()
        np.savez(path, tree=np.frombuffer(tree, np.uint8))
        with pytest.raises(NotKept):
            Keeper().read("r", path, "x")
    np.savez(path, tree=np.array([object()], object))
    with pytest.raises(NotKept):
        Keeper().read("r", path, "x")


def test_values_of_all_kinds_come_back_the_same(tmp_path):
    found = compute(settings_of(survey(tmp_path), tmp_path / "job", dem=1.0))
    numbers = (1 + 2j, np.float64(0.1), np.complex128(1j), np.bool_(1), float("nan"), None)
    arrays = (np.array(["x", None, 1.5], object), np.zeros((0, 3)), np.arange(6).reshape(2, 3).T)
    odd = (*numbers, *arrays, Path("a"), [1, (2, "x")], {"a": 1, (1, 2): [3]})
    first, second = Keeper(), Keeper()
    digest = first.write("r", (found.points, found.surface, odd), tmp_path / "r.npz")
    below = first.write("s", (found.surface, 1), tmp_path / "s.npz")
    points, surface, back = second.read("r", tmp_path / "r.npz", digest)
    assert second.read("s", tmp_path / "s.npz", below)[0] is surface
    assert repr(back) == repr(odd)
    assert [type(one) for one in back] == [type(one) for one in odd]
    for each in fields(points):
        assert np.array_equal(getattr(points, each.name), getattr(found.points, each.name)) or each.name in (
            "sigma_h", "sigma_v", "time", "tilt", "extra",
        )  # fmt: skip
    assert Keeper().write("r", (points, surface, back), tmp_path / "t.npz") == digest
    assert Keeper().write("s", (surface, 1), tmp_path / "u.npz") == below, "the digest tells of content, not of names"
    assert (tmp_path / "r.npz").read_bytes() == (tmp_path / "t.npz").read_bytes()


def test_a_file_beside_counts_with_the_one_that_is_named(tmp_path):
    mesh = tmp_path / "old.2dm"
    mesh.write_text("MESH2D\n")
    before = FileDigests().of(mesh)
    (tmp_path / "old.noise.json").write_text("{}")
    assert FileDigests().of(mesh) != before


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="no pipes")
def test_a_pipe_is_never_the_same(tmp_path):
    os.mkfifo(tmp_path / "pipe")
    assert FileDigests().of(tmp_path / "pipe") != FileDigests().of(tmp_path / "pipe")


def test_paths_come_back_as_they_are_seen_from_here(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    file = survey(tmp_path)
    whole = as_kept(settings_of(file, tmp_path / "job"))
    short = as_kept(settings_of(Path("survey.csv"), tmp_path / "job"))
    assert whole.survey == short.survey == Path("survey.csv")


# Beside the job


def test_another_survey_of_the_same_name_is_told(tmp_path, capsys):
    """A folder that was copied beside another survey reads that one: told by the run, and not in the report."""
    file = survey(tmp_path / "one")
    run_job(settings_of(file, tmp_path / "one" / "job"))
    survey(tmp_path / "two", high=5.0)
    shutil.copytree(tmp_path / "one" / "job", tmp_path / "two" / "job")
    assert main(["--job", str(tmp_path / "two" / "job")]) == 0
    said = capsys.readouterr().out
    assert "survey.csv holds something else than when this job was last run" in said
    assert "copied folder" not in (tmp_path / "two" / "job" / "report.html").read_text(encoding="utf-8")
    assert main(["--job", str(tmp_path / "two" / "job")]) == 0
    assert "holds something else" not in capsys.readouterr().out
    assert main(["--job", str(tmp_path / "one" / "job")]) == 0
    assert "holds something else" not in capsys.readouterr().out


def test_a_plan_of_an_older_interval_is_no_good_one(tmp_path):
    file, plan = survey(tmp_path), tmp_path / "plan.pdf"
    plan.write_bytes(b"%PDF-1.4 at 0.1")
    settings = settings_of(file, tmp_path / "job", others=(plan,))
    told = "plan.pdf is handed over as it was made before"
    assert not any(told in str(said) for said in run_job(settings).remarks)
    other = replace(settings, contours=ContourOptions(0.2))
    for _ in range(2):  # for as long as it is the same plan
        assert any(told in str(said) for said in run_job(other).remarks)
    assert told in (tmp_path / "job" / "report.html").read_text(encoding="utf-8")
    plan.write_bytes(b"%PDF-1.4 at 0.2")
    assert not any(told in str(said) for said in run_job(other).remarks)
    assert told not in (tmp_path / "job" / "report.html").read_text(encoding="utf-8")
