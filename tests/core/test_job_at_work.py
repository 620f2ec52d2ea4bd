"""What befalls the folder of a job: older files put back, two runs at once, a killed run, inputs named as products."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
import time
from dataclasses import replace
from pathlib import Path

import pytest
from test_job_file import products, settings_of, survey

from plugin.core.__main__ import main
from plugin.core.contours.lines import ContourOptions
from plugin.core.files import CANNOT_WRITE
from plugin.core.job.at_work import alone
from plugin.core.job.job_file import read_job
from plugin.core.job.keeping import out_of_date
from plugin.core.job.run import continue_job, run_job
from plugin.core.messages import SurveyError
from plugin.core.surface.build import SurfaceOptions

ROOT = Path(__file__).resolve().parents[2]


def test_an_older_file_of_the_job_put_back_gives_what_it_says(tmp_path):
    """As a backup or a synchronised folder does it: the kept results are those of a later run."""
    settings = settings_of(survey(tmp_path), tmp_path / "job")
    run_job(settings)
    first, older = products(tmp_path / "job"), (tmp_path / "job" / "job.json").read_bytes()
    run_job(replace(settings, contours=ContourOptions(0.2), surface=SurfaceOptions(max_rim_edge=2.0)))
    assert products(tmp_path / "job") != first
    (tmp_path / "job" / "job.json").write_bytes(older)
    assert out_of_date(read_job(tmp_path / "job"), tmp_path / "job")
    continue_job(tmp_path / "job")
    assert products(tmp_path / "job") == first


def test_kept_results_of_another_job_are_not_taken(tmp_path):
    settings = settings_of(survey(tmp_path), tmp_path / "job")
    other = replace(settings, out=tmp_path / "other", surface=SurfaceOptions(max_rim_edge=2.0))
    run_job(settings)
    run_job(other)
    for path in (tmp_path / "other" / "stages").glob("*.npz"):
        (tmp_path / "job" / "stages" / path.name).write_bytes(path.read_bytes())
    changed = replace(settings, contours=ContourOptions(0.25))
    run_job(changed)
    run_job(replace(changed, out=tmp_path / "new"))
    assert products(tmp_path / "job") == products(tmp_path / "new")


def test_a_second_run_is_refused_while_one_is_at_work(tmp_path):
    settings = settings_of(survey(tmp_path), tmp_path / "job")
    with alone(tmp_path / "job" / "stages"), pytest.raises(SurveyError, match="another run is at work"):
        run_job(settings)
    run_job(settings)  # let go
    stages = str(tmp_path / "job" / "stages")
    words = "import sys, time; from pathlib import Path; from plugin.core.job.at_work import alone\n"
    words += "with alone(Path(sys.argv[1])):\n print('held', flush=True); time.sleep(60)"
    with subprocess.Popen([sys.executable, "-c", words, stages], cwd=ROOT, stdout=subprocess.PIPE) as held:
        assert held.stdout.readline() == b"held\n"
        with pytest.raises(SurveyError, match="another run is at work"):
            continue_job(tmp_path / "job")
        held.send_signal(signal.SIGKILL)
    continue_job(tmp_path / "job")  # a run that was killed holds nothing


@pytest.mark.parametrize("name", ["contours.geojson", "points.csv", "surface.2dm"])
def test_no_product_takes_the_place_of_a_file_that_is_read(tmp_path, name):
    job = tmp_path / "job"
    job.mkdir()
    if name == "points.csv":
        file, more = survey(job, "points.csv"), {}
    elif name == "surface.2dm":
        from plugin.core.job.volumes import VolumeQuestion

        run_job(settings_of(survey(tmp_path), tmp_path / "before"))
        (job / name).write_bytes((tmp_path / "before" / name).read_bytes())
        file, more = survey(tmp_path), {"questions": (VolumeQuestion(since=job / name),)}
    else:
        ring = [[500003.2, 5800003.1], [500015.1, 5800003.4], [500009.2, 5800015.3], [500003.2, 5800003.1]]
        named = {"type": "name", "properties": {"name": "EPSG:25832"}}
        told = {"type": "Polygon", "coordinates": [ring], "crs": named}
        (job / name).write_text(json.dumps(told), encoding="utf-8")
        file, more = survey(tmp_path), {"boundary": job / name}
    before = (job / name).read_bytes()
    with pytest.raises(SurveyError, match="would take its place"):
        run_job(settings_of(file, job, **more))
    assert (job / name).read_bytes() == before
    assert not (job / "report.html").exists()
    run_job(settings_of(file, tmp_path / "elsewhere", **more))


def test_a_file_made_elsewhere_that_is_gone_is_told_and_the_job_is_done(tmp_path):
    plan = tmp_path / "plan.pdf"
    plan.write_bytes(b"%PDF-1.4")
    settings = replace(settings_of(survey(tmp_path), tmp_path / "job"), others=(plan,))
    run_job(settings)
    assert "plan.pdf" in (tmp_path / "job" / "checksums.sha256").read_text()
    plan.unlink()
    result = continue_job(tmp_path / "job")
    assert any("plan.pdf" in str(one) and "not there" in str(one) for one in result.remarks)
    assert "plan.pdf" not in (tmp_path / "job" / "checksums.sha256").read_text()
    assert "plan.pdf" in (tmp_path / "job" / "report.html").read_text(encoding="utf-8")  # where it is told
    assert out_of_date(read_job(tmp_path / "job"), tmp_path / "job") == []


@pytest.mark.parametrize("seconds", [0.6, 1.2, 1.8, 2.4])
def test_a_killed_run_leaves_the_files_of_one_run_and_none_astray(tmp_path, seconds):
    """All files as before or all new, or the job knows; the next run, with the earlier choices, leaves no other."""
    survey(tmp_path, side=20)
    settings = settings_of(tmp_path / "survey.csv", tmp_path / "job")
    run_job(settings)
    before = products(tmp_path / "job")
    words = [f"{tmp_path}/survey.csv", "--crs", "EPSG:25832", "--interval", "0.2", "--no-check", "--found-lines", "no"]
    words += ["--dem", "0.25", "--volume-level", "100", "--out", f"{tmp_path}/job"]
    with subprocess.Popen([sys.executable, "-m", "plugin.core", *words], cwd=ROOT, stderr=subprocess.DEVNULL,
                          stdout=subprocess.DEVNULL) as run:  # fmt: skip
        time.sleep(seconds)
        run.send_signal(signal.SIGKILL)
    after = products(tmp_path / "job")
    assert main([*words[:-1], f"{tmp_path}/new"]) == 0
    known = out_of_date(read_job(tmp_path / "job"), tmp_path / "job")
    assert after in (before, products(tmp_path / "new")) or "files" in known
    run_job(settings)
    assert products(tmp_path / "job") == before
    assert not (tmp_path / "job" / "stages" / "new").exists()


def test_where_the_disk_is_full_the_products_stay_as_they_were(tmp_path, monkeypatch):
    from plugin.core.job import write

    settings = settings_of(survey(tmp_path), tmp_path / "job")
    run_job(settings)
    before = products(tmp_path / "job")

    def full(*_):
        raise SurveyError(CANNOT_WRITE, file="points.csv", reason="No space left on device")

    monkeypatch.setattr(write, "write_points", full)
    with pytest.raises(SurveyError, match="No space left"):
        run_job(replace(settings, contours=ContourOptions(0.2)))
    assert products(tmp_path / "job") == before
    assert os.listdir(tmp_path / "job" / "stages").count("new") == 0
