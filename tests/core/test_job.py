"""The headless main job: what it writes, and what it says to input that is wrong."""

import json
import os
import re
import signal
import subprocess
import sys
import time
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from plugin.core.__main__ import STAGES, ProgressLine, main
from plugin.core.contours.lines import ContourOptions
from plugin.core.handover.mesh import read_2dm
from plugin.core.job.run import run_job
from plugin.core.job.settings import JobSettings
from plugin.core.progress import Cancelled
from plugin.core.units import LengthUnit

ROOT = Path(__file__).parents[2]
HEADER = "name,easting,northing,height,code\n"
FILES = [
    "contours.geojson",
    "surface.2dm",
    "surface.prj",
    "points.csv",
    "rejects.csv",
    "findings.csv",
    "checksums.sha256",
    "report.html",
    "job.json",
]


def products(folder):
    """Names of the files of a job, but for what it keeps of itself."""
    names = os.listdir(folder) if Path(folder).exists() else []
    return sorted(set(names) - {"job.json", "stages"})


def hill(side=12, spacing=2.0, east=500000.0, north=5800000.0, factor=1.0):
    """Lines of a survey over a smooth hill; coordinates divided by ``factor``."""
    lines = []
    for i in range(side):
        for j in range(side):
            x, y = east + spacing * i, north + spacing * j
            z = 100 + 2 * np.exp(-((i - side / 2) ** 2 + (j - side / 2) ** 2) / side)
            lines.append(f"p{i * side + j},{x / factor:.4f},{y / factor:.4f},{z / factor:.4f},")
    return lines


def write(path, lines, header=HEADER):
    path.write_text(header + "\n".join(lines) + "\n", encoding="utf-8")
    return path


def run(survey, folder, *more, crs=("--crs", "EPSG:25832"), interval="0.25", check=False):
    """Run the command line; surveys made up for these tests are no walks: they are checked, and lines looked for in
    them, only if asked."""
    checks = () if check else ("--no-check", "--found-lines=no")
    return main([str(survey), *crs, "--interval", interval, "--out", str(folder), *checks, *more])


def test_the_files_are_written_and_named(tmp_path, capsys):
    survey = write(tmp_path / "hill.csv", hill())
    assert run(survey, tmp_path / "out") == 0
    said = capsys.readouterr()
    lines = said.out.splitlines()
    assert lines[0].startswith("Site      52.35")
    assert lines[1] == "The points were not checked: what the receiver got wrong is in the surface."
    assert lines[3].startswith("Points    144 from 145 lines")
    at = lines.index(f"Written to {tmp_path / 'out'}:")
    assert [line.split()[0] for line in lines[at + 1 :]] == FILES
    assert all(re.fullmatch(r"  \S+ +[0-9.]+ (B|kB|MB)", line) for line in lines[at + 1 :])
    assert sorted(os.listdir(tmp_path / "out")) == sorted([*FILES, "stages"])
    assert said.err.splitlines() == [
        STAGES[key] for key in ("points", "surface", "quality", "contours", "findings", "files", "report")
    ]


def test_the_files_agree_with_each_other(tmp_path):
    survey = write(tmp_path / "hill.csv", hill())
    assert run(survey, tmp_path / "out") == 0
    tin = read_2dm(tmp_path / "out" / "surface.2dm")
    assert len(tin.vertices) == 144
    assert tin.plan_area == pytest.approx(22.0**2)
    contours = json.loads((tmp_path / "out" / "contours.geojson").read_text(encoding="utf-8"))
    levels = sorted({feature["properties"]["level"] for feature in contours["features"]})
    assert levels == pytest.approx(np.arange(100.25, tin.height_range[1], 0.25))
    assert len((tmp_path / "out" / "points.csv").read_text(encoding="utf-8").splitlines()) == 145


def test_a_run_gives_the_same_files_again(tmp_path):
    survey = write(tmp_path / "hill.csv", hill())
    for folder in ("one", "two"):
        assert run(survey, tmp_path / folder) == 0
    for name in FILES:
        assert (tmp_path / "one" / name).read_bytes() == (tmp_path / "two" / name).read_bytes(), name


def test_feet_are_those_of_the_crs_unless_said_otherwise(tmp_path):
    """EPSG:2263 is in US survey feet, 1200/3937 m (NIST SP 811)."""
    foot = 1200 / 3937
    survey = write(tmp_path / "feet.csv", hill(east=300000.0, north=60000.0, factor=foot))
    settings = JobSettings(
        survey, tmp_path / "a", ContourOptions(0.5, unit=LengthUnit.US_SURVEY_FOOT), "EPSG:2263", check=False
    )
    tin = run_job(settings).surface.tin
    assert tin.plan_area == pytest.approx(22.0**2, rel=1e-4)  # square metres inside
    assert tin.bounds[0] == pytest.approx(300000.0, abs=1e-3)
    first = (tmp_path / "a" / "surface.2dm").read_text().split("ND", 1)[1].split()[1:3]
    assert float(first[0]) == pytest.approx(300000.0 / foot, abs=1e-3)
    assert run(survey, tmp_path / "b", "--unit", "ft", crs=("--crs", "EPSG:2263"), interval="1") == 0
    other = read_2dm(tmp_path / "b" / "surface.2dm").bounds[0]  # still US survey feet, as the CRS says
    assert other == pytest.approx(300000.0 / foot * 0.3048 / foot, abs=1e-3)


def test_heights_that_are_no_numbers_are_rejected_and_the_rest_is_used(tmp_path, capsys):
    lines = hill()
    for line, word in ((3, "nan"), (40, "inf"), (80, "-Infinity")):
        lines[line] = ",".join([*lines[line].split(",")[:3], word, ""])
    assert run(write(tmp_path / "hill.csv", lines), tmp_path / "out") == 0
    assert "(3 lines rejected)" in capsys.readouterr().out
    rejects = (tmp_path / "out" / "rejects.csv").read_text(encoding="utf-8").splitlines()
    assert [line.split(",")[0] for line in rejects[1:]] == ["5", "42", "82"]


def test_decisions_by_hand_count(tmp_path, capsys):
    survey = write(tmp_path / "hill.csv", hill())
    (tmp_path / "decisions.csv").write_text(
        "line,status,reason\n9,rejected,pole_height\n10,flagged,tilt\n7000,rejected,\n"
    )
    assert run(survey, tmp_path / "out", "--decisions", str(tmp_path / "decisions.csv")) == 0
    said = capsys.readouterr().out
    assert "142 used, 1 flagged, 1 rejected" in said
    assert "7000" in said  # a decision about no point is told


def breaklines(first, second):
    """A hill with two lines that cross, at heights ``first`` and ``second``."""
    middle = [f"a1,500003,5800003,{first},KT 1 BEGIN", f"a2,500017,5800017,{first},KT 1 END"]
    middle += [f"b1,500003,5800017,{second},KT 2 BEGIN", f"b2,500017,5800003,{second},KT 2 END"]
    return hill() + middle


def test_field_codes_can_be_left_unread(tmp_path, capsys):
    survey = write(tmp_path / "hill.csv", breaklines(100.0, 101.0))
    assert run(survey, tmp_path / "out", "--no-codes") == 0
    assert "Lines " not in capsys.readouterr().out


# Wrong input: exit status 2 and one line that names the file and what to do


def bad_inputs():
    """name: (content of survey.csv or None, further arguments, words the line must have)"""
    good = HEADER + "\n".join(hill()) + "\n"
    semicolons = good.replace(",", ";")
    letters = HEADER + "\n".join(f"p{i},left,right,up,GR" for i in range(30)) + "\n"
    line = HEADER + "".join(f"p{i},{500000 + i},{5800000 + i},100,\n" for i in range(3))
    two = HEADER + "p1,500000,5800000,100,\np2,500001,5800000,100,\n"
    nothing_finite = HEADER + "".join(f"p{i},{500000 + i},{5800000 + i * i},nan,\n" for i in range(9))
    crossing = HEADER + "\n".join(breaklines(100.0, 101.0)) + "\n"
    local = ("--crs", "local")
    return {
        "a missing file": (None, local, ["survey.csv", "no such file"]),
        "an empty file": ("", local, ["survey.csv", "empty"]),
        "a binary file": (bytes(range(256)) * 20, local, ["survey.csv", "binary"]),
        "a wrong delimiter": (semicolons, (*local, "--delimiter", ","), ["survey.csv", "delimiter"]),
        "a column of text": (letters, local, ["survey.csv", "line 2"]),
        "no crs": (good, (), ["survey.csv", "--crs EPSG:25832", "--crs local"]),
        "a crs in degrees": (good, ("--crs", "EPSG:4326"), ["degrees"]),
        "an unknown crs": (good, ("--crs", "EPSG:1"), ["EPSG:1"]),
        "three points on a line": (line, local, ["survey.csv", "line"]),
        "two points": (two, local, ["survey.csv", "2"]),
        "no finite height": (nothing_finite, local, ["survey.csv"]),
        "crossing breaklines": (crossing, local, ["survey.csv", "KT 1", "KT 2", "100.0", "101.0"]),
        "missing decisions": (good, (*local, "--decisions", "nowhere.csv"), ["nowhere.csv"]),
        "a missing code table": (good, (*local, "--codes", "nowhere.csv"), ["nowhere.csv"]),
        "a column that is not there": (
            good,
            (*local, "--columns", "name,easting,northing,-,-,-,height"),
            ["survey.csv"],
        ),
        "an unknown option": (good, (*local, "--colour", "red"), ["--colour", "--help"]),
        "an interval of nothing": (good, (*local, "--interval", "0"), ["--interval"]),
        "an interval in words": (good, (*local, "--interval", "half"), ["--interval", "half"]),
        "far too many levels": (good, (*local, "--interval", "1e-7"), ["interval"]),
        "no index": (good, (*local, "--index-every", "0"), ["ndex"]),
    }


@pytest.mark.parametrize("what", bad_inputs())
def test_wrong_input_is_told_in_one_line(tmp_path, capsys, monkeypatch, what):
    content, more, words = bad_inputs()[what]
    monkeypatch.chdir(tmp_path)
    if isinstance(content, bytes):
        Path("survey.csv").write_bytes(content)
    elif content is not None:
        Path("survey.csv").write_text(content, encoding="utf-8")
    assert run("survey.csv", "out", *more, crs=()) == 2
    said = capsys.readouterr()
    assert said.out == ""
    lines = [line for line in said.err.splitlines() if line not in STAGES.values()]
    assert len(lines) == 1, said.err
    for word in words:
        assert word in lines[0]
    assert products("out") == []


def test_a_folder_that_cannot_be_made(tmp_path, capsys):
    survey = write(tmp_path / "hill.csv", hill())
    (tmp_path / "taken").write_text("a file")
    assert run(survey, tmp_path / "taken") == 2
    assert "taken" in capsys.readouterr().err.splitlines()[-1]
    assert (tmp_path / "taken").read_text() == "a file"


def test_a_fault_of_the_program_is_one_line_and_status_3(tmp_path, capsys, monkeypatch):
    def fail(*_):
        raise ZeroDivisionError("made\nto fail")

    monkeypatch.setattr("plugin.core.job.stages.build_surface_with_edits", fail)
    survey = write(tmp_path / "hill.csv", hill())
    assert run(survey, tmp_path / "out") == 3
    said = capsys.readouterr().err
    assert "ZeroDivisionError: made to fail" in said.splitlines()[-1]
    assert "Traceback" not in said
    assert run(survey, tmp_path / "out", "--debug") == 3
    assert "Traceback" in capsys.readouterr().err


# Stopping


def test_cancelling_leaves_no_file(tmp_path):
    survey = write(tmp_path / "hill.csv", hill())

    def stop(fraction, stage):
        if stage == "contours":
            raise Cancelled

    settings = JobSettings(survey, tmp_path / "out", ContourOptions(0.25), "EPSG:25832", check=False)
    with pytest.raises(Cancelled):
        run_job(settings, stop)
    assert products(tmp_path / "out") == []


def test_cancelled_at_any_time_nothing_half_written_is_left(tmp_path):
    """With the check, lines of the ground, coverage and report: at random, and at least once in each stage."""
    told = []
    survey = Path(__file__).parents[2] / "test_data" / "demo" / "uncoded.csv"
    settings = JobSettings(survey, tmp_path / "whole", ContourOptions(0.25), "EPSG:25832", find_lines=True)
    run_job(settings, lambda fraction, stage: told.append(stage))
    whole = {path.name: path.stat().st_size for path in (tmp_path / "whole").iterdir()}
    random = np.random.default_rng(8)
    turns = {stage: random.choice(np.flatnonzero(np.array(told) == stage)) for stage in told}
    assert {"points", "check", "features", "surface", "quality", "contours", "files", "report"} <= set(turns)
    for k, turn in enumerate(turns.values()):
        asked = []

        def stop(fraction, stage, asked=asked, turn=turn):
            asked.append(stage)
            if len(asked) > turn:
                raise Cancelled

        out = tmp_path / f"out{k}"
        with pytest.raises(Cancelled):
            run_job(replace(settings, out=out), stop)
        left = {path.name: path.stat().st_size for path in out.iterdir()} if out.exists() else {}
        if "job.json" in left:  # grows with what the job has done
            del left["job.json"]
            json.loads((out / "job.json").read_text(encoding="utf-8"))
        assert left.items() <= whole.items()


def test_progress_never_runs_backwards(tmp_path):
    told = []
    survey = write(tmp_path / "hill.csv", breaklines(100.0, 100.0))
    settings = JobSettings(survey, tmp_path / "out", ContourOptions(0.25), "EPSG:25832", check=False)
    run_job(settings, lambda fraction, stage: told.append(fraction))
    assert np.diff(told).min() > -1e-9
    assert told[0] >= 0.0
    assert told[-1] == pytest.approx(1.0)


@pytest.mark.skipif(os.name == "nt", reason="signals are sent otherwise")
def test_interrupting_gives_130_and_no_half_written_file(tmp_path):
    survey = write(tmp_path / "large.csv", hill(side=300, spacing=0.5))
    process = subprocess.Popen(
        [sys.executable, "-W", "ignore", "-m", "plugin.core", str(survey), "--crs", "local", "--interval", "0.001",
         "--out", str(tmp_path / "out")],
        cwd=ROOT, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True,
        preexec_fn=lambda: signal.signal(signal.SIGINT, signal.SIG_DFL),  # a shell ignores it for what runs behind
    )  # fmt: skip
    first = process.stderr.readline()  # it is at work
    time.sleep(0.2)
    process.send_signal(signal.SIGINT)
    out, err = process.communicate(timeout=60)
    assert first.strip() == STAGES["points"]
    assert process.returncode == 130, err
    assert out == ""
    assert "Traceback" not in err
    assert not set(products(tmp_path / "out")) - set(FILES)


def test_the_module_runs_as_a_command(tmp_path):
    survey = write(tmp_path / "hill.csv", hill())
    command = [sys.executable, "-W", "ignore", "-m", "plugin.core", str(survey), "--interval", "0.5"]
    done = subprocess.run([*command, "--crs", "local", "--out", str(tmp_path / "out")], cwd=ROOT, capture_output=True)
    assert done.returncode == 0, done.stderr
    assert done.stdout.decode().splitlines()[-1].split()[0] == "job.json"
    assert not (tmp_path / "out" / "surface.prj").exists()  # a local grid has no CRS to write
    done = subprocess.run([*command, "--out", str(tmp_path / "out")], cwd=ROOT, capture_output=True)
    assert done.returncode == 2
    assert len(done.stderr.splitlines()) == 1


class Terminal:
    def __init__(self, terminal):
        self.text, self.terminal = "", terminal

    def isatty(self):
        return self.terminal

    def write(self, text):
        self.text += text

    def flush(self):
        pass


def test_progress_on_a_terminal_is_one_line():
    stream = Terminal(True)
    progress = ProgressLine(stream)
    for fraction in (0.0, 0.1, 0.101, 0.5):
        progress(fraction, "surface")
    progress.clear()
    assert "\n" not in stream.text
    assert stream.text.count("%") == 3  # 0, 10 and 50; the same line is not written again
    assert stream.text.endswith("\r\x1b[K")


def test_progress_in_a_log_is_a_line_a_stage():
    stream = Terminal(False)
    progress = ProgressLine(stream)
    for stage in ("points", "surface", "surface", "lines", "surface", "contours"):
        progress(0.5, stage)
    assert stream.text.splitlines() == [STAGES[key] for key in ("points", "surface", "lines", "contours")]
