"""The report of the whole job as HTML and PDF, read by other libraries."""

from __future__ import annotations

import csv
import hashlib
import unicodedata
from html.parser import HTMLParser
from pathlib import Path
from typing import Any, Dict, List, Optional, Tuple

import pypdf
import pytest
from in_qgis import DEMO, Listener, memory_layer, message_of


class Reader(HTMLParser):
    """Headings, and what is missing for a reader who cannot see."""

    def __init__(self) -> None:
        super().__init__()
        self.headings: List[str] = []
        self.faults: List[str] = []
        self.open: Optional[str] = None

    def handle_starttag(self, tag: str, attributes: List[Tuple[str, Optional[str]]]) -> None:
        given = dict(attributes)
        self.open = tag
        if tag == "img" and not given.get("alt"):
            self.faults.append("a picture without words for it")
        if tag == "th" and not given.get("scope"):
            self.faults.append("a table heading that does not say of what")
        if tag == "html" and not given.get("lang"):
            self.faults.append("no language")

    def handle_data(self, text: str) -> None:
        if self.open == "h2" and text.strip():
            self.headings.append(text.strip())
            self.open = None


@pytest.fixture(scope="module")
def reported(application: Any, tmp_path_factory: pytest.TempPathFactory) -> Dict[str, Any]:
    import processing

    folder = tmp_path_factory.mktemp("job")
    plan = folder / "elsewhere.pdf"
    plan.write_bytes(b"%PDF-1.4 a plan")
    asked = {
        "INPUT": str(DEMO / "survey.csv"),
        "CRS": "EPSG:25832",
        "CHECKS_FILE": str(DEMO / "check_points.csv"),
        "MAX_RIM_EDGE": 10,
        "ALSO": [str(plan)],
        "FOLDER": str(folder / "out"),
    }
    return dict(processing.run("hummock:surveyreport", asked, feedback=Listener().feedback))


def test_html_and_pdf_tell_the_same(reported: Dict[str, Any]) -> None:
    html = Path(reported["HTML"]).read_text(encoding="utf-8")
    reader = Reader()
    reader.feed(html)
    assert reader.faults == []
    pages = [" ".join(page.extract_text().split()) for page in pypdf.PdfReader(reported["PDF"]).pages]
    # spaces depend on how letters are kerned, and fi may be one letter
    text = unicodedata.normalize("NFKC", "".join(pages)).replace(" ", "")
    assert len(reader.headings) > 10
    for heading in reader.headings:
        assert heading.replace(" ", "") in text, heading
    for number, page in enumerate(pages, 1):
        assert f"Page {number} of {len(pages)}" in page, page[-80:]
    assert "FGDC-STD-007.3-1998" in text


def test_every_picture_is_in_the_pdf_and_within_its_page(reported: Dict[str, Any]) -> None:
    html = Path(reported["HTML"]).read_text(encoding="utf-8")
    pictures = sum(len(page.images) for page in pypdf.PdfReader(reported["PDF"]).pages)
    assert pictures >= html.count("<img ") > 3


def test_files_are_listed_with_their_sha_256(reported: Dict[str, Any]) -> None:
    html = Path(reported["HTML"]).read_text(encoding="utf-8")
    folder = Path(reported["FOLDER"])
    listed = (folder / "checksums.sha256").read_text(encoding="utf-8").splitlines()
    names = {line.split("  ", 1)[1]: line.split("  ", 1)[0] for line in listed}
    assert "surface.2dm" in names
    assert any(name.endswith("elsewhere.pdf") for name in names)
    for name, sha in names.items():
        assert hashlib.sha256((folder / name).read_bytes()).hexdigest() == sha
        assert sha in html
    assert (
        reported["FILES"] == len(names) - 1 + 3
    )  # without the plan, with the list, the report and the file of the job


def test_a_file_that_is_not_there_is_refused_in_one_line(run: Any, tmp_path: Path) -> None:
    said = message_of(
        run, "surveyreport", INPUT=str(tmp_path / "none.csv"), CRS="EPSG:25832", FOLDER=str(tmp_path / "out")
    )
    assert "none.csv" in said


def test_road_and_pad_from_layers_are_told_and_written(application: Any, tmp_path: Path, run: Any) -> None:
    """Layers in another CRS come to the one of the survey."""
    import processing

    site = f"{DEMO / 'site.gpkg'}|layername=centreline"
    degrees = processing.run(
        "native:reprojectlayer", {"INPUT": site, "TARGET_CRS": "EPSG:4326", "OUTPUT": "TEMPORARY_OUTPUT"}
    )["OUTPUT"]
    pad = "Polygon((548295 5712430, 548315 5712430, 548315 5712445, 548295 5712445, 548295 5712430))"
    found = run(
        "surveyreport",
        INPUT=str(DEMO / "survey.csv"),
        CRS="EPSG:25832",
        ROAD=degrees,
        PAD=memory_layer("Polygon", [pad], "EPSG:25832", "pad"),
        PAD_LEVEL="87.2",
        WATER=True,
        INLETS=memory_layer("Point", ["Point(548260 5712403)"], "EPSG:25832", "gully"),
        SINCE=str(DEMO / "before.2dm"),
        PAPER=False,
        FOLDER=str(tmp_path / "out"),
    )
    html = Path(found["HTML"]).read_text(encoding="utf-8")
    assert "PDF" not in found
    assert "Crossfall" in html
    assert "licensed" in html
    for name in ("profile.csv", "sections.pdf", "pad.2dm", "daylight.geojson", "ponds.geojson", "volumes_since.csv"):
        assert (tmp_path / "out" / name).stat().st_size > 100
    said = message_of(
        run,
        "surveyreport",
        INPUT=str(DEMO / "survey.csv"),
        CRS="EPSG:25832",
        PAD_LEVEL="up",
        PAD=memory_layer("Polygon", [pad], "EPSG:25832", "pad"),
        FOLDER=str(tmp_path / "no"),
    )
    assert "up" in said


def test_a_layer_in_place_of_the_file_brings_its_statuses(run: Any, project: Any, tmp_path: Path) -> None:
    from qgis.core import QgsVectorLayer

    layer = QgsVectorLayer("PointZ?crs=EPSG:25833&field=code:string&field=status:string", "yard", "memory")
    from qgis.core import QgsFeature, QgsGeometry, QgsPoint

    for i in range(12):
        for j in range(12):
            feature = QgsFeature(layer.fields())
            feature.setGeometry(QgsGeometry(QgsPoint(400000 + 2.0 * i, 5700000 + 2.0 * j, 50 + 0.05 * i)))
            feature.setAttributes(["GR", "rejected" if (i, j) == (5, 5) else "used"])
            layer.dataProvider().addFeature(feature)
    asked = {"LAYER": layer, "CRS": "EPSG:25833", "CHECK": False, "PAPER": False, "FOLDER": str(tmp_path / "out")}
    found = run("surveyreport", **asked)
    assert (found["POINTS"], found["REJECTS"]) == (144, 0)
    mesh = (tmp_path / "out" / "surface.2dm").read_text(encoding="utf-8").splitlines()
    assert sum(line.startswith("ND ") for line in mesh) == 143
    with open(tmp_path / "out" / "points.csv", encoding="utf-8", newline="") as file:
        assert [row["status"] for row in csv.DictReader(file)].count("rejected") == 1
    said = message_of(run, "surveyreport", **{**asked, "INPUT": str(DEMO / "survey.csv")})
    assert "one of both" in said
    # in the neighbouring zone the same points come to lie there
    moved = run("surveyreport", **{**asked, "CRS": "EPSG:25832", "FOLDER": str(tmp_path / "moved")})
    assert moved["POINTS"] == 144
    assert "EPSG:25833" in (tmp_path / "moved" / "report.html").read_text(encoding="utf-8")


def test_every_choice_of_a_job_can_be_made_and_layers_stay_with_the_job(run: Any, project: Any, tmp_path: Path) -> None:
    """Choices reach the file of the job as they do from the desk; the job goes on without the layers it was given."""
    from plugin.core.job.job_file import read_job
    from plugin.core.job.run import compute
    from plugin.processing.jobchoices import all_choices
    from plugin.processing.surveyreport import SurveyReport

    algorithm = SurveyReport()
    algorithm.initAlgorithm({})
    names = {one.name() for one in algorithm.parameterDefinitions()}
    assert {choice.name for choice in all_choices()} <= names
    ring = "Polygon((548240 5712390, 548320 5712390, 548320 5712450, 548240 5712450, 548240 5712390))"
    folder = tmp_path / "out"
    asked = {
        "INPUT": str(DEMO / "survey.csv"),
        "CRS": "EPSG:25832",
        "BOUNDARY": memory_layer("Polygon", [ring], "EPSG:25832", "limits"),
        "GEOID": 46.0,
        "HEIGHTS_ARE": 2,
        "MAX_RIM_EDGE": 12.5,
        "TOLERANCES": 1,
        "BASE": 0.1,
        "INTERVAL": 0.5,
        "KEEP_FLAGGED": True,
        "PAPER": False,
        "FOLDER": str(folder),
    }
    run("surveyreport", **asked)
    told = read_job(folder).settings
    assert (told.geoid, told.surface.max_rim_edge, told.contours.base) == ("46", 12.5, 0.1)
    assert told.tolerances is not None
    assert told.tolerances.name == "control"
    assert told.keep_flagged
    assert told.boundary is not None
    area = compute(told).surface.tin.plan_area
    assert 3000 < area <= 80 * 60 + 1  # within the boundary
    mesh = (folder / "surface.2dm").read_bytes()
    project.clear()
    said = message_of(run, "surveyreport", FOLDER=str(folder), PAPER=False, KEEP_FLAGGED=True)
    assert "own choices" in said
    assert "Keep flagged stretches in the surface" in said
    run("surveyreport", FOLDER=str(folder), PAPER=False)
    assert (folder / "surface.2dm").read_bytes() == mesh
    assert compute(read_job(folder).settings).surface.tin.plan_area == area


def test_a_choice_about_what_is_not_asked_is_refused(run: Any, project: Any, tmp_path: Path) -> None:
    plain = {"INPUT": str(DEMO / "survey.csv"), "CRS": "EPSG:25832", "FOLDER": str(tmp_path / "out")}
    said = message_of(run, "surveyreport", **plain, PAD_LEVEL="balance")
    assert "Height of the pads" in said
    gully = memory_layer("Point", ["Point(548260 5712403)"], "EPSG:25832", "gully")
    assert "Inlets" in message_of(run, "surveyreport", **plain, INLETS=gully)
    assert "folder of a job" in message_of(run, "surveyreport", FOLDER=str(tmp_path / "none"))
