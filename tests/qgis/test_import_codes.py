"""Field codes as the field writes them, and decisions on points of several files, in “Import” and “Check”."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict

import pytest
from in_qgis import Listener, layer_of, message_of

HEADER = "name,easting,northing,height,code,nr"
PATTERN = "((?P<line>[0-9]+):)?(?P<code>[A-Z]+)"


def survey(path: Path, codes: Dict[int, str], number: str = "") -> str:
    rows = [f"p{k},{500000 + 2 * (k % 6)},{5700000 + 2 * (k // 6)},10,{codes.get(k, '')},{number}" for k in range(36)]
    path.write_text("\n".join([HEADER, *rows]) + "\n", encoding="utf-8")
    return str(path)


def statuses(layer: Any) -> Dict[str, str]:
    rows = {row["name"]: (row["status"], row["reason"]) for row in layer_of(layer).getFeatures()}
    return {name: reason for name, (status, reason) in rows.items() if status != "used"}


def test_codes_of_another_form_say_the_same_of_points(run: Any, tmp_path: Path) -> None:
    file = survey(tmp_path / "survey.csv", {3: "CK", 4: "1:CK", 5: "2:TR"})
    given = {"INPUT": file, "CRS": "EPSG:25832", "OUTPUT": "TEMPORARY_OUTPUT"}
    assert set(statuses(run("importpoints", **given)["OUTPUT"])) == {"p3"}
    points = run("importpoints", CODE_PATTERN=PATTERN, **given)["OUTPUT"]
    expected = {"p3", "p4", "p5"}
    assert set(statuses(points)) == expected
    with_codes = {"INPUT": points, "OUTPUT": "TEMPORARY_OUTPUT", "FINDINGS": None}
    assert set(statuses(run("checksurvey", CODE_PATTERN=PATTERN, **with_codes)["OUTPUT"])) == expected


@pytest.mark.parametrize("name", ["importpoints", "checksurvey"])
def test_a_convention_that_cannot_work_is_one_line(run: Any, tmp_path: Path, name: str) -> None:
    file = survey(tmp_path / "survey.csv", {3: "CK"}, "1")
    points = run("importpoints", INPUT=file, CRS="EPSG:25832", OUTPUT="TEMPORARY_OUTPUT", LINE_NUMBER_FIELD="nr")
    given = {"INPUT": file, "CRS": "EPSG:25832"} if name == "importpoints" else {"INPUT": points["OUTPUT"]}
    text = message_of(run, name, CODE_PATTERN="(", OUTPUT="TEMPORARY_OUTPUT", **given)
    assert "cannot be used" in text
    assert "\n" not in text.strip()


def test_decisions_name_the_file_of_a_point(run: Any, tmp_path: Path) -> None:
    first = survey(tmp_path / "one.csv", {})
    rows = [line.replace("p", "q", 1) for line in Path(first).read_text(encoding="utf-8").splitlines()[1:]]
    second = tmp_path / "two.csv"
    second.write_text("\n".join([HEADER, *rows]) + "\n", encoding="utf-8")
    hand = tmp_path / "hand.csv"
    given = {"INPUT": first, "MORE": [str(second)], "CRS": "EPSG:25832", "DECISIONS": str(hand)}
    hand.write_text("line,status,reason\n3,rejected,\n", encoding="utf-8")
    text = message_of(run, "importpoints", OUTPUT="TEMPORARY_OUTPUT", **given)
    assert "several files (one.csv, two.csv)" in text
    hand.write_text("source,line,status,reason\ntwo.csv,3,rejected,\nthree.csv,3,rejected,\n", encoding="utf-8")
    listener = Listener()
    points = run("importpoints", listener, OUTPUT="TEMPORARY_OUTPUT", **given)["OUTPUT"]
    assert statuses(points) == {"q1": "by_hand"}
    assert any("'three.csv' is none of the files" in said for said in listener.warnings)
