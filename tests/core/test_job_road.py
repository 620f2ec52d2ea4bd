"""The main job asked about a road: files, report, what the terminal says, and options that do not fit."""

import csv
import re
from html.parser import HTMLParser
from pathlib import Path

import numpy as np
import pytest

from plugin.core.__main__ import main
from plugin.core.alignment.rules import default_rules, without_doubles

DEMO = Path(__file__).parents[2] / "test_data" / "demo"
COMMON = [str(DEMO / "survey.csv"), "--crs", "EPSG:25832", "--interval", "0.5", "--rim-edge", "10"]
ROAD = ["--line", str(DEMO / "centreline.geojson"), "--lane", "2.3"]


@pytest.fixture(scope="module")
def out(tmp_path_factory):
    folder = tmp_path_factory.mktemp("road")
    assert main([*COMMON, *ROAD, "--stations", "20", "--paper", "A3", "--out", str(folder)]) == 0
    return folder


def table(path):
    return list(csv.DictReader(path.read_text(encoding="utf-8").splitlines()))


def test_tables(out):
    stations = table(out / "profile.csv")
    distance = [float(row["distance_m"]) for row in stations]
    assert distance[:3] == [0, 20, 40]
    assert stations[1]["station"] == "0+020.00"
    for row in stations[1:-1]:
        # heights 91.3 - 0.0525 s + 0.000085 s^2 of the scenario: the grade is the derivative, within its doubt
        grade = -5.25 + 0.017 * float(row["distance_m"])
        assert float(row["grade_pct"]) == pytest.approx(grade, abs=4 * float(row["grade_sigma_pct"]))
        assert float(row["crossfall_pct"]) == pytest.approx(2.0, abs=4 * float(row["crossfall_sigma_pct"]))
    sections = table(out / "sections.csv")
    assert {row["section"] for row in sections} == {str(k) for k in range(1, len(stations) + 1)}
    assert max(float(row["offset"]) for row in sections) == pytest.approx(10.0, abs=1e-3)
    checks = table(out / "checks.csv")
    rules = without_doubles(default_rules())
    assert len(rules) < len(default_rules())
    assert {row["rule"] for row in checks} == {rule.name for rule in rules}
    assert {row["source"] for row in checks} == {rule.source for rule in rules}
    assert {name for rule in rules for name in rule.name.split("; ")} == {rule.name for rule in default_rules()}
    for rule in rules:
        lengths = [float(row["to_m"]) - float(row["from_m"]) for row in checks if row["rule"] == rule.name]
        assert sum(lengths) == pytest.approx(distance[-1], abs=0.01)
    assert {row["part"] for row in checks} == {"", "lane"}, "the lane has one fall"
    steep = [row for row in checks if "Outdoor access route: running slope" in row["rule"] and row["verdict"] == "fail"]
    assert all(float(row["to_m"]) < 16 for row in steep), "only the first 15 m break 1:20"


def test_only_ends_where_an_edge_is_off_the_surface_are_not_judged(out):
    """The site's boundary is oblique to the lane: at its end one edge leaves the surface 1.4 m before the other."""
    rows = [row for row in table(out / "checks.csv") if row["verdict"] == "no_surface"]
    assert rows
    assert all(float(row["to_m"]) - float(row["from_m"]) < 1.5 for row in rows)


def test_sheets_are_of_the_paper(out):
    for name, sides in (("profile.pdf", (420.0, 297.0)), ("sections.pdf", (297.0, 420.0))):
        box = re.search(rb"/MediaBox \[ ?0 0 ([0-9.]+) ([0-9.]+)", (out / name).read_bytes())
        size = [float(value) / 72 * 25.4 for value in box.groups()]
        np.testing.assert_allclose(size, sides, atol=0.1)


class _Headings(HTMLParser):
    def __init__(self):
        super().__init__()
        self.inside, self.texts = False, []

    def handle_starttag(self, tag, _):
        self.inside = tag in ("h2", "h3")

    def handle_endtag(self, tag):
        self.inside = False

    def handle_data(self, data):
        if self.inside:
            self.texts.append(data)


def test_report_has_the_road(out):
    text = (out / "report.html").read_text(encoding="utf-8")
    parser = _Headings()
    parser.feed(text)
    for title in ("Road: Perry Lane", "Profile and grades", "Crossfall", "Against the limits", "Indications"):
        assert title in parser.texts
    for needed in ("too close to tell", "licensed professional", "403.3", "to the left edge", "profile.pdf"):
        assert needed in text
    shown = re.sub(r'src="data:[^"]*"', "", text[text.index('<section id="road"') :].split("</section>")[0])
    assert not re.search(r"\b(nan|inf)\b", shown)


def test_the_terminal_says_it(tmp_path, capsys):
    rules = tmp_path / "rules.csv"
    rules.write_text("rule,quantity,at_least,at_most,source\nsteep,grade,,1%,a test\n")
    assert main([*COMMON, *ROAD, "--rules", str(rules), "--no-check", "--out", str(tmp_path / "out")]) == 0
    said = capsys.readouterr().out
    assert re.search(r"Road {6}Perry Lane, 127\.2 m; stretches by the limits: 0 pass, 1 fail, 0 too close", said)


@pytest.mark.parametrize(
    ("more", "said"),
    [
        (["--lane", "2"], "--lane is about a road"),
        (["--start-station", "0"], "--start-station is about a road"),
        ([*ROAD[:1], "nowhere.geojson"], "nowhere.geojson"),
        ([*ROAD, "--rules", "nowhere.csv"], "nowhere.csv"),
        ([*ROAD, "--start-station", "x"], "x is no station"),
        ([*ROAD, "--equations", "1+0"], "no station equation"),
        ([*ROAD, "--stations", "0"], "--stations must be a number above zero"),
        ([*ROAD, "--paper", "B5"], "--paper"),
    ],
)
def test_options_that_do_not_fit(tmp_path, capsys, more, said):
    assert main([*COMMON, "--no-check", *more, "--out", str(tmp_path)]) == 2
    told = capsys.readouterr().err.strip().splitlines()[-1]
    assert said in told
    assert not list(tmp_path.glob("*.pdf"))
