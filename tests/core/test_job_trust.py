"""What the headless main job says of the survey's worth: check points, coverage, places to walk again."""

import csv
import re
from pathlib import Path

import numpy as np
import pytest
from test_job import hill, run, write

from plugin.core.points.decisions import read_decisions
from plugin.core.quality.tolerances import TOPOGRAPHIC, read_tolerances


def text_of(report):
    html = re.sub(r'src="[^"]*"', "", report.read_text(encoding="utf-8"))
    return " ".join(re.sub(r"<[^>]*>", " ", html).split())


def test_check_points_are_compared_and_stated(tmp_path, capsys):
    survey = write(tmp_path / "hill.csv", hill())
    rows = [line.split(",") for line in hill()[5:140:5]]  # vertices: the surface has their heights
    off = 0.02 * np.where(np.arange(len(rows)) % 2, 1.0, -1.0) + 0.01
    shots = [f"{r[0]},{r[1]},{r[2]},{float(r[3]) - d:.4f},0.005,hard" for r, d in zip(rows, off)]
    checks = write(tmp_path / "checks.csv", shots, "name,easting,northing,height,sigma_v,cover\n")
    assert run(survey, tmp_path / "out", "--check-points", str(checks), "--accuracy-class", "2") == 0
    rmse = float(np.sqrt(np.mean(off**2)))
    said = capsys.readouterr().out
    assert f"RMSE {rmse:.3f} m, mean {off.mean():+.3f} m against {len(rows)} check points" in said
    text = text_of(tmp_path / "out" / "report.html")
    # FGDC-STD-007.3-1998, 3.2.1: 1.9600 RMSEz
    assert f"Tested {1.96 * rmse:.3f} metres vertical accuracy at 95 % confidence level" in text
    assert "does not meet the 2-cm RMSEV" in text
    assert f"only {len(rows)} checkpoints" in text  # ASPRS edition 2 asks for 30
    assert f"The surface lies {off.mean():+.3f} m off the check points" in text, "a bias is said plainly"


def test_check_points_in_feet_are_read_in_the_unit_of_the_crs(tmp_path, capsys):
    foot = 1200 / 3937  # NIST SP 811
    lines = hill(east=300000.0, north=60000.0, factor=foot)
    survey = write(tmp_path / "feet.csv", lines)
    checks = write(
        tmp_path / "checks.csv", [line.rsplit(",", 1)[0] for line in lines[3:60:3]], "name,easting,northing,height\n"
    )
    assert run(survey, tmp_path / "out", "--check-points", str(checks), crs=("--crs", "EPSG:2263")) == 0
    assert "RMSE 0.000 ftUS" in capsys.readouterr().out


def test_without_check_points_the_report_says_what_is_missing(tmp_path, capsys):
    assert run(write(tmp_path / "hill.csv", hill()), tmp_path / "out") == 0
    assert "Accuracy" not in capsys.readouterr().out
    assert "There are no check points on the surface" in text_of(tmp_path / "out" / "report.html")


def test_a_gap_gives_places_to_walk_again(tmp_path, capsys):
    lines = [line for line in hill(side=16) if not near_the_middle(line)]
    survey = write(tmp_path / "gap.csv", lines)
    assert run(survey, tmp_path / "out", "--max-gap", "3") == 0
    rows = list(csv.DictReader((tmp_path / "out" / "places_to_walk.csv").read_text(encoding="utf-8").splitlines()))
    assert 1 <= len(rows) < 12
    assert f"{len(rows)} places to walk again" in capsys.readouterr().out
    measured = np.array([line.split(",")[1:3] for line in lines], float)
    for row in rows:
        place = np.array([float(row["easting"]), float(row["northing"])])
        assert np.hypot(*(place - (500015.0, 5800015.0))) < 9.0
        assert np.hypot(*(measured - place).T).min() > 3.0
    text = text_of(tmp_path / "out" / "report.html")
    assert all(row["name"] in text for row in rows)
    assert "Places to walk again, in walking order" in text


def near_the_middle(line):
    east, north = (float(word) for word in line.split(",")[1:3])
    return np.hypot(east - 500015.0, north - 5800015.0) < 8.0


def test_full_ground_needs_no_second_walk(tmp_path):
    assert run(write(tmp_path / "hill.csv", hill()), tmp_path / "out") == 0
    assert not (tmp_path / "out" / "places_to_walk.csv").exists()
    assert "No place needs to be walked again." in text_of(tmp_path / "out" / "report.html")


@pytest.mark.parametrize(
    ("more", "words"),
    [
        (("--accuracy-class", "0"), ["--accuracy-class"]),
        (("--max-gap", "-1"), ["--max-gap"]),
        (("--check-points", "nowhere.csv"), ["nowhere.csv"]),
    ],
)
def test_mistakes_are_told_in_one_line(tmp_path, capsys, more, words):
    assert run(write(tmp_path / "hill.csv", hill()), tmp_path / "out", *more) == 2
    told = capsys.readouterr().err.splitlines()
    assert all(word in told[-1] for word in words)
    assert not (tmp_path / "out" / "report.html").exists()


# Doubtful points


def test_rejected_points_are_shown_along_the_walk(tmp_path):
    survey = write(tmp_path / "hill.csv", hill())
    rows = [f"{line},rejected,pole_height" for line in range(40, 46)] + ["90,flagged,tilt", "120,rejected,check_shot"]
    decisions = write(tmp_path / "decisions.csv", rows, "line,status,reason\n")
    assert run(survey, tmp_path / "out", "--decisions", str(decisions)) == 0
    text = text_of(tmp_path / "out" / "report.html")
    assert "Places with flagged or rejected points: 2 of 2" in text
    assert re.search(r"40\u201345 0 6 pole lifted or its height wrong", text)
    assert re.search(r"90 1 0 pole tilted", text)
    assert "2 of 2 places with flagged or rejected points" in text


def test_a_survey_without_doubts_says_so(tmp_path):
    assert run(write(tmp_path / "hill.csv", hill()), tmp_path / "out") == 0
    assert "No point was flagged or rejected" in text_of(tmp_path / "out" / "report.html")


# Automatic checks

DEMO = Path(__file__).parents[2] / "test_data" / "demo"


@pytest.fixture(scope="module")
def checked(tmp_path_factory):
    """The demo checked without a hand, and with a hand that overrules the checks in one point of a fault."""
    folder = tmp_path_factory.mktemp("checked")
    decisions = write(
        folder / "decisions.csv", ["1822,used,", "1823,rejected,pole_height", "20,rejected,"], "line,status,reason\n"
    )
    more = {"plain": (), "hand": ("--decisions", str(decisions))}
    for name, words in more.items():
        assert run(DEMO / "survey.csv", folder / name, "--rim-edge", "10", *words, check=True) == 0
    return folder


def table_of(path):
    return {int(row["line"]): row for row in csv.DictReader(path.read_text(encoding="utf-8").splitlines())}


def test_the_checks_reject_the_faults_of_the_demo(checked):
    """Against the list of faults that the demo's generator wrote down."""
    truth = csv.DictReader((DEMO / "truth.csv").read_text(encoding="utf-8").splitlines())
    rows = table_of(checked / "plain" / "points.csv")
    lifted = [int(row["line"]) for row in truth if row["fault"] in ("lifted_pole", "slipped_pole", "wrong_fix")]
    assert len(lifted) > 20
    out = [rows[line]["status"] == "rejected" for line in lifted]
    assert sum(out) >= 0.95 * len(out)


def test_the_hand_wins_and_is_reported(checked):
    plain, hand = (table_of(checked / name / "points.csv") for name in ("plain", "hand"))
    assert plain[1822]["status"] == plain[1823]["status"] == "rejected"
    assert hand[1822]["status"] == "used"
    assert (hand[1822]["check_status"], hand[1822]["check_reason"]) == ("rejected", "pole_height")
    assert "by_hand" in hand[20]["reason"]
    assert hand[20]["check_status"] == "used"
    differ = [line for line in plain if plain[line]["status"] != hand[line]["status"]]
    assert differ == [20, 1822]
    text = text_of(checked / "hand" / "report.html")
    assert "another status by hand than the checks gave them: 2. Decisions that agree with the checks: 1." in text
    assert re.search(r"1822 rejected pole lifted or its height wrong used decided by hand", text)


def test_the_report_tells_tolerances_findings_and_how_heights_repeat(checked):
    text = text_of(checked / "plain" / "report.html")
    assert "What single points are held to: the set \u201ctopographic\u201d" in text
    assert "14 points from line 1822 to 1835 lie -0.2" in text
    found = re.search(r"one height, both together ([0-9.]+) its 95 % interval ([0-9.]+) \u2013 ([0-9.]+)", text)
    total, low, high = (float(word) for word in found.groups())
    assert low < total < high
    assert 10 < total < 20  # mm; the generator's noise
    assert "Run by run, where a run met others" in text
    assert "places with flagged or rejected points, each kind before" in text


def test_tolerances_can_be_ones_own(tmp_path, capsys):
    survey = write(tmp_path / "hill.csv", [f"{line}0.03" for line in hill()], "name,easting,northing,height,sigma_v\n")
    sets = tmp_path / "sets.json"
    sets.write_text('[{"name": "strict", "sigma_v": 0.02}, {"name": "mild", "sigma_v": 0.05}]', encoding="utf-8")
    given = ("--tolerances", str(sets), "--check")
    assert run(survey, tmp_path / "mild", *given, "mild", check=True) == 0
    text = text_of(tmp_path / "mild" / "report.html")
    assert "the set \u201cmild\u201d standard deviation of the height, at most 0.05 m" in text
    assert run(survey, tmp_path / "strict", *given, "strict", check=True) == 2  # no point is left
    assert run(survey, tmp_path / "none", *given, "other", check=True) == 2
    assert "strict, mild" in capsys.readouterr().err.splitlines()[-1]
    assert run(survey, tmp_path / "none", "--check", "--tolerances", check=True) == 2


def test_tolerances_of_a_run_are_written_and_taken_again(checked, tmp_path):
    sets = checked / "plain" / "tolerances.json"
    assert read_tolerances(sets) == (TOPOGRAPHIC,)
    assert "tolerances.json" in text_of(checked / "plain" / "report.html")
    survey = write(tmp_path / "hill.csv", hill())
    assert run(survey, tmp_path / "out", "--tolerances", str(sets), "--check", "topographic", check=True) == 0


def test_a_status_edited_in_the_points_is_a_decision(checked, tmp_path):
    rows = (checked / "plain" / "points.csv").read_text(encoding="utf-8").splitlines()
    place = next(i for i, row in enumerate(rows) if row.startswith("1822,"))
    rows[place] = rows[place].replace(",rejected,pole_height,", ",used,pole_height,", 1)
    edited = tmp_path / "edited.csv"
    edited.write_text("\n".join(rows) + "\n", encoding="utf-8")
    taken = read_decisions(edited)
    assert (taken.line.tolist(), taken.status.tolist()) == ([1822], [0])


def test_without_checks_the_report_says_so(tmp_path):
    assert run(write(tmp_path / "hill.csv", hill()), tmp_path / "out") == 0
    assert "The points were not checked (--no-check)" in text_of(tmp_path / "out" / "report.html")


def test_tilt_is_asked_about_first_and_the_word_counts(tmp_path, capsys):
    """Every point leans by 15 degrees: no change of tilt, so the heights cannot tell."""
    survey = write(tmp_path / "lean.csv", [f"{line}15.0" for line in hill()], "name,easting,northing,height,tilt\n")
    assert run(survey, tmp_path / "ask", check=True) == 0
    first = capsys.readouterr().out.splitlines()[1]  # after the place
    assert f"{len(hill())} points, 100 % of the file, are tilted by more than 8°" in first
    assert "--tilt-compensated" in first
    assert first in text_of(tmp_path / "ask" / "report.html")
    assert {row["status"] for row in table_of(tmp_path / "ask" / "points.csv").values()} == {"flagged"}
    assert run(survey, tmp_path / "yes", "--tilt-compensated", "yes", check=True) == 0
    assert "As you said, the rover compensates tilt" in capsys.readouterr().out.splitlines()[1]
    assert not any("tilt" in row["reason"] for row in table_of(tmp_path / "yes" / "points.csv").values())
    assert read_tolerances(tmp_path / "yes" / "tolerances.json")[0].tilt is None
    assert run(survey, tmp_path / "no", "--tilt-compensated", "no", check=True) == 2  # no point is left
    assert run(survey, tmp_path / "named", "--check", "topographic", check=True) == 2
