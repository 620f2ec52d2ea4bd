"""Tolerance sets: kept as JSON, edited, read again; each limit, each reason; files that are wrong."""

from __future__ import annotations

import json
from pathlib import Path

import numpy as np
import pytest

from plugin.core.messages import SurveyError, Text, message
from plugin.core.points.delimited import read_points
from plugin.core.points.pointset import PointSet, Reason, Status, make_points
from plugin.core.quality.check import check_survey
from plugin.core.quality.tolerances import (
    CONTROL,
    SHIPPED,
    TOPOGRAPHIC,
    find_tolerances,
    judge,
    read_tolerances,
    status_of,
    write_tolerances,
)


def test_sets_come_back_as_they_were_written_and_can_be_edited(tmp_path: Path) -> None:
    file = tmp_path / "sets.json"
    write_tolerances(SHIPPED, file)
    assert read_tolerances(file) == SHIPPED
    rows = json.loads(file.read_text(encoding="utf-8"))
    rows[0]["tilt"], rows[1]["fixes"] = 12, [4, 5]
    file.write_text(json.dumps(rows), encoding="utf-8")
    topographic, control = read_tolerances(file)
    assert topographic.tilt == 12
    assert control.fixes == (4, 5)
    assert (CONTROL.epochs, TOPOGRAPHIC.epochs) == (3, 1)  # several observations, one (common practice, no source)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ('[\n  {"name": "mine",\n   "tilt": ,\n  }\n]', ["line 3", "no JSON"]),
        ('[{"name": "a", "tilt": 5,\n "tilt": 9}]', ["'tilt' stands twice"]),
        ('[{"name": "a", "tilt": "5"}]', ['tilt is "5"', "without quotation marks"]),
        ('[{"name": "a", "tilt": -1}]', ["tilt is -1", "a number above 0"]),
        ('[{"name": "a", "tilt": NaN}]', ["tilt is NaN"]),
        ('[{"name": "a", "tilt": 1' + "0" * 400 + "}]", ["tilt is 1000"]),
        ('[{"name": "a", "fixes": 4}]', ["fixes is 4", "such as [4] or [4, 5]"]),
        ('[{"name": "a", "epochs": 1.5}]', ["epochs is 1.5", "a whole number from 1 up"]),
        ('[{"name": "a", "tlt": 5}]', ["'tlt' is no tolerance", "tilt, pdop, age, epochs"]),
        ('{"name": "a"}', ["write [ and ] around them"]),
        ("[]", ["a list of tolerance sets"]),
        ('[{"name": "a"}, {"name": "a"}]', ["two sets are called 'a'"]),
        ("[" * 100_000, ["brackets within brackets"]),
        ("", ["line 1", "no JSON"]),
    ],
)
def test_a_file_that_is_wrong_is_told_what_is_wrong(tmp_path: Path, text: str, said: list) -> None:
    file = tmp_path / "sets.json"
    file.write_text(text, encoding="utf-8")
    with pytest.raises(SurveyError) as caught:
        read_tolerances(file)
    told = str(caught.value)
    assert told.startswith(str(file))
    assert all(words in told for words in said), told


def test_other_encodings_and_missing_files(tmp_path: Path) -> None:
    file = tmp_path / "sets.json"
    file.write_bytes(b"\xff\xfe[\x00")
    with pytest.raises(SurveyError, match="UTF-8"):
        read_tolerances(file)
    with pytest.raises(SurveyError, match="cannot be read"):
        read_tolerances(tmp_path / "none.json")


def test_a_set_is_found_by_its_name_or_as_the_only_one() -> None:
    assert find_tolerances(SHIPPED, "control") is CONTROL
    assert find_tolerances([CONTROL], "") is CONTROL
    with pytest.raises(SurveyError, match=r"several tolerance sets.*: topographic, control"):
        find_tolerances(SHIPPED, "", "sets.json")
    with pytest.raises(SurveyError, match="no tolerance set is called 'x'"):
        find_tolerances(SHIPPED, "x", "sets.json")


def judged(**columns: object) -> PointSet:
    """Five points in a row, the second with what ``columns`` say, as text where they are extra."""
    n = 5
    known = {name: columns.pop(name) for name in list(columns) if name in ("sigma_h", "sigma_v", "fix", "tilt")}
    own = {name: np.where(np.arange(n) == 1, value, 0 if name != "fix" else 4) for name, value in known.items()}
    extra = {name: np.array(["1", str(value), "1", "", "1"], object) for name, value in columns.items()}
    x = np.arange(n, dtype=float)
    return make_points(x, x, x, source_line=np.arange(2, n + 2), extra=extra, **own)


@pytest.mark.parametrize(
    ("columns", "reason", "status"),
    [
        ({"sigma_h": 0.2}, Reason.SIGMA_HORIZONTAL, Status.REJECTED),
        ({"sigma_v": 0.2}, Reason.SIGMA_VERTICAL, Status.REJECTED),
        ({"fix": 5}, Reason.NO_FIX, Status.REJECTED),
        ({"tilt": -12.0}, Reason.TILT, Status.REJECTED),
        ({"PDOP": 9}, Reason.PDOP, Status.FLAGGED),
        ({"Age of correction (s)": 12}, Reason.CORRECTION_AGE, Status.FLAGGED),
        ({"age": 12, "pdop": 9}, Reason.CORRECTION_AGE | Reason.PDOP, Status.FLAGGED),
        ({"tilt": 9.0, "sigma_v": 0.2}, Reason.TILT | Reason.SIGMA_VERTICAL, Status.REJECTED),
    ],
)
def test_every_limit_gives_its_reason_and_all_of_them_count(columns: dict, reason: Reason, status: Status) -> None:
    points = judged(**columns)
    found = judge(points, TOPOGRAPHIC)
    assert found.tolist() == [0, int(reason), 0, 0, 0]
    assert status_of(found).tolist() == [0, int(status), 0, 0, 0]
    check = check_survey(points)
    (finding,) = check.findings
    words = "+".join(str(each.name).lower() for each in Reason if each and each & reason)
    assert str(finding.message) == f"The point of line 3 is beyond the tolerances 'topographic' ({words})."


def test_the_control_set_asks_for_several_observations(tmp_path: Path) -> None:
    """Columns called as a German receiver may call them."""
    file = tmp_path / "base.csv"
    rows = ["548200.0,5712300.0,80.0,3,1.0", "548210.0,5712300.0,80.0,1,1.0", "548200.0,5712310.0,80.0,5,3.5"]
    head = "Rechtswert,Hochwert,Höhe,Anzahl Epochen,Korrekturalter"
    file.write_text("\n".join([head, *rows]) + "\n", encoding="utf-8")
    points = read_points(file).points
    assert points.extra["epochs"].tolist() == [3, 1, 5]
    assert points.extra["age"].tolist() == [1.0, 1.0, 3.5]
    assert judge(points, CONTROL).tolist() == [0, int(Reason.FEW_EPOCHS), int(Reason.CORRECTION_AGE)]
    assert not judge(points, TOPOGRAPHIC).any()


def test_points_stored_while_standing_leave_one_with_their_weighted_mean_and_their_spread() -> None:
    """Twelve records in one place, two kinds of stated sigma by turns: weights 1/sigma² (common practice)."""
    random = np.random.default_rng(3)
    x = np.concatenate([np.arange(0, 20, 0.5), np.full(12, 20.0), np.arange(20.5, 40, 0.5)])
    n, stop = len(x), slice(40, 52)
    north, height = np.zeros(n), random.normal(50, 0.01, n)
    x[stop] += random.normal(0, 0.01, 12)
    north[stop] += random.normal(0, 0.01, 12)
    sigma = np.where(np.arange(n) % 2, 0.005, 0.02)
    points = make_points(
        500000 + x, 5700000 + north, height, sigma_h=sigma, sigma_v=sigma, source_line=np.arange(n) + 2
    )
    check = check_survey(points)
    (found,) = check.findings
    weight = 1 / sigma[stop] ** 2
    assert check.points.height[40] == pytest.approx(np.average(height[stop], weights=weight))
    assert check.points.easting[40] == pytest.approx(np.average(points.easting[stop], weights=weight))
    spread = [each[stop].std(ddof=1) for each in (points.easting, points.northing, height)]
    assert str(found.message) == (
        "12 points from line 42 to 53 were stored in one place; the first now has their weighted mean, the others are "
        f"kept out. Spread {np.hypot(*spread[:2]):.3f} m in plan, {spread[2]:.3f} m in height."
    )
    assert check.points.status.tolist() == [0] * 41 + [2] * 11 + [0] * (n - 52)
    assert check.points.extra["height_recorded"][40] == height[40], "what was recorded is kept"


def test_one_is_told_as_one() -> None:
    text = Text("test.points", "{count} points from line {line} to {last}.", one="The point of line {line}.")
    assert str(message(text, count=2, line=3, last=4)) == "2 points from line 3 to 4."
    assert str(message(text, count=1, line=3, last=3)) == "The point of line 3."
    assert str(message(Text("test.plain", "Points: {count}"), count=1)) == "Points: 1"
    german = {"The point of line {line}.": "Der Punkt in Zeile {line}."}
    assert message(text, count=1, line=3, last=3).say(lambda english: german.get(english, english)) == (
        "Der Punkt in Zeile 3."
    )
