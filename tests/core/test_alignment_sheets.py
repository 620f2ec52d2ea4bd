"""Sheets of profiles and cross-sections: true to scale, nothing on top of each other, the same bytes every time."""

import re
import subprocess
import sys
import zlib
from dataclasses import replace

import numpy as np
import pytest

from plugin.core.alignment.curves import fit_curves
from plugin.core.alignment.grades import grades
from plugin.core.alignment.line import make_alignment
from plugin.core.alignment.profile import make_profile
from plugin.core.alignment.sections import cut_sections, section_distances
from plugin.core.messages import SurveyError
from plugin.core.papers import OFFICE_PAPERS, Paper
from plugin.core.report.paper import page_style
from plugin.core.report.profile_sheets import ProfileSheet, profile_pages, write_profile_sheets
from plugin.core.report.section_sheets import SectionSheet, section_pages, write_section_sheets
from plugin.core.report.sheet_parts import nice_above
from plugin.core.units import LengthUnit
from tests.core.surfaces import ORIGIN, delaunay_tin, random_tin, ring

MM = 72 / 25.4  # points
PATH = np.array([[5.0, 12.0], [50.0, 15.0], [88.0, 45.0], [90.0, 95.0]])


def raised(tin, by):
    return replace(tin, vertices=tin.vertices + np.column_stack([0 * tin.vertices[:, :2], by(tin.vertices[:, 0])]))


@pytest.fixture(scope="module")
def surfaces():
    tin = random_tin(900, 1, keep=ring)
    return [("Survey of May", tin), ("Design", raised(tin, lambda x: 0.4 * np.sin(x / 7)))]


@pytest.fixture(scope="module")
def line():
    return make_alignment(ORIGIN + PATH, "Hill Road", 1000.0, [(1060.0, 2000.0)], LengthUnit.METRE)


@pytest.fixture(scope="module")
def plane():
    return plane_road()


def plane_road():
    """10 m in 100 m, and the line along it."""
    tin = delaunay_tin(np.array([[0, 0], [100, 0], [100, 20], [0, 20.0]]), np.array([50, 60, 60, 50.0]))
    return make_alignment(ORIGIN + np.array([[0.0, 10.0], [100.0, 10.0]]), "Plane"), [("Ground", tin)]


def paths(pdf):
    """Every drawn path of a PDF as points (k, 2), in points of 1/72 inch."""
    found = []
    for stream in re.findall(rb"stream\r?\n(.*?)endstream", pdf, re.S):
        try:
            text = zlib.decompress(stream).decode("latin-1")
        except zlib.error:
            continue
        for path in re.findall(r"((?:-?[\d.]+ -?[\d.]+ [ml]\s+)+)S", text):
            found.append(np.array(re.findall(r"(-?[\d.]+) (-?[\d.]+) [ml]", path), float))
    return found


def test_a_profile_measures_true(plane, tmp_path):
    line, surfaces = plane
    write_profile_sheets(make_profile(line, surfaces), tmp_path / "p.pdf", ProfileSheet(scale=500, height_scale=200))
    pdf = (tmp_path / "p.pdf").read_bytes()
    spans = [np.ptp(path, axis=0) / MM for path in paths(pdf)]
    # 100 m at 1:500 are 200 mm, 10 m at 1:200 are 50 mm
    assert any(np.allclose(span, [200, 50], atol=0.01) for span in spans)


def test_a_section_measures_true(plane, tmp_path):
    _, surfaces = plane
    tilted = make_alignment(ORIGIN + np.array([[50.0, 2.0], [50.0, 18.0]]), "Across")
    sections = cut_sections(tilted, np.array([8.0]), 7.0, 9.0, surfaces)
    write_section_sheets(sections, tmp_path / "s.pdf", SectionSheet(scale=200, height_scale=50))
    spans = [np.ptp(path, axis=0) / MM for path in paths((tmp_path / "s.pdf").read_bytes())]
    # 16 m at 1:200 are 80 mm, 1.6 m at 1:50 are 32 mm
    assert any(np.allclose(span, [80, 32], atol=0.01) for span in spans)


@pytest.mark.parametrize("paper", OFFICE_PAPERS)
def test_paper_sizes(paper, plane, tmp_path):
    """ISO 216: A4 210 x 297 mm, A3 297 x 420 mm. Letter 8.5 x 11 in, Tabloid 11 x 17 in (ANSI/ASME Y14.1, from
    memory)."""
    expected = {"A4": (297, 210), "A3": (420, 297), "Letter": (279.4, 215.9), "Tabloid": (431.8, 279.4)}[paper.value]
    line, surfaces = plane
    for portrait in (False, True):
        write_profile_sheets(make_profile(line, surfaces), tmp_path / "p.pdf", ProfileSheet(paper, portrait))
        boxes = re.findall(rb"/MediaBox \[ 0 0 ([\d.]+) ([\d.]+) \]", (tmp_path / "p.pdf").read_bytes())
        sizes = {tuple(round(float(v) / MM, 1) for v in box) for box in boxes}
        assert sizes == {expected[::-1] if portrait else expected}


def overlaps(page):
    """Pairs of texts of a page that lie on each other, and texts off the page's margins."""
    renderer = page.figure.canvas.get_renderer()
    texts = [text for text in page.axes.texts if text.get_text().strip()]
    boxes = [text.get_window_extent(renderer) for text in texts]
    bad = []
    for i, one in enumerate(boxes):
        if (
            one.x0 < 0.03 * page.figure.bbox.x1
            or one.x1 > 0.97 * page.figure.bbox.x1
            or one.y0 < 0
            or (one.y1 > page.figure.bbox.y1)
        ):
            bad.append(texts[i].get_text())
        for j in range(i):
            other = boxes[j]
            if (
                min(one.x1, other.x1) - max(one.x0, other.x0) > 0.5
                and min(one.y1, other.y1) - max(one.y0, other.y0) > 0.5
            ):
                bad.append((texts[i].get_text(), texts[j].get_text()))
    return bad


@pytest.mark.parametrize(
    "sheet", [ProfileSheet(), ProfileSheet(Paper.A3, scale=200), ProfileSheet(Paper.LETTER, True, 250)]
)
@pytest.mark.parametrize("grade", ["fit", "windows", "none"])
def test_nothing_of_a_profile_lies_on_another(line, surfaces, sheet, grade):
    profile = make_profile(line, surfaces)
    fit = fit_curves(profile.surfaces[0], 2.0) if grade == "fit" else None
    windows = grades(line, surfaces[0][1], 0.02, 7.0) if grade == "windows" else None
    with page_style():
        pages = list(profile_pages(profile, sheet, fit, windows))
        assert all(overlaps(page) == [] for page in pages)
    words = [text.get_text() for page in pages for text in page.axes.texts]
    assert "Profile of Hill Road" in words
    assert "1+060.00 back = 2+000.00 ahead" in words
    assert "Difference (m)" in words
    assert ("Grade (%)" in words) == (grade != "none")
    assert f"Sheet {len(pages)} of {len(pages)}" in words


@pytest.mark.parametrize(
    "sheet", [SectionSheet(), SectionSheet(Paper.TABLOID, False, 50), SectionSheet(scale=150, height_scale=50)]
)
def test_nothing_of_the_sections_lies_on_another(line, surfaces, sheet):
    sections = cut_sections(line, section_distances(line, 10.0), 5.0, 6.0, surfaces)
    with page_style():
        pages = list(section_pages(sections, sheet))
        for page in pages:
            assert overlaps(page) == []
    words = [text.get_text() for page in pages for text in page.axes.texts]
    assert sum(word.startswith("Station ") for word in words) == len(sections)
    assert any(re.fullmatch(r"cut [\d.]+ m²   fill [\d.]+ m².*", word) for word in words)


def test_heights_and_differences_shown_are_those_of_the_surfaces(plane):
    line, ((name, tin),) = plane
    profile = make_profile(line, [(name, tin), ("Road", raised(tin, lambda x: 0.25 + 0 * x))])
    with page_style():
        (page,) = profile_pages(profile, ProfileSheet(scale=1000, title="A $1 and $2 road"))
        assert overlaps(page) == []
    words = [text.get_text() for text in page.axes.texts]
    assert r"A \$1 and \$2 road" in words  # matplotlib shows an escaped sign as it is, and else takes it for a formula
    for word in ("0+050.00", "55.00", "55.25", "+0.25", "50.00", "60.25"):
        assert word in words


def test_feet_are_shown_in_feet(plane):
    line, surfaces = plane
    feet = make_alignment(line.xy, "Feet", 0.0, unit=LengthUnit.FOOT)
    with page_style():
        (page,) = profile_pages(make_profile(feet, surfaces), ProfileSheet(scale=480))
    words = [text.get_text() for text in page.axes.texts]
    assert "Station (ft)" in words
    assert "1+00.00" in words
    assert f"{50 / 0.3048:.2f}" in words


def test_the_same_bytes_without_dates_and_fonts_embedded(plane, tmp_path):
    line, surfaces = plane
    code = (
        "import sys, matplotlib; matplotlib.rcParams['savefig.bbox'] = 'tight'; matplotlib.rcParams['font.size'] = 20\n"
        "sys.path.insert(0, '.')\n"
        "from tests.core.test_alignment_sheets import *\n"
        "line, surfaces = plane_road()\n"
        f"write_profile_sheets(make_profile(line, surfaces), {str(tmp_path / 'other.pdf')!r})\n"
    )
    done = subprocess.run([sys.executable, "-W", "ignore", "-c", code], capture_output=True, text=True)
    assert done.returncode == 0, done.stderr
    write_profile_sheets(make_profile(line, surfaces), tmp_path / "one.pdf")
    data = (tmp_path / "one.pdf").read_bytes()
    assert data == (tmp_path / "other.pdf").read_bytes()
    for word in (b"CreationDate", b"ModDate", b"/Producer", b"/Creator", b"/Type3"):
        assert word not in data
    assert b"/FontFile2" in data


def test_scales_that_do_not_fit_are_refused(line, surfaces, tmp_path):
    profile = make_profile(line, surfaces)
    for scale, said in ((0, "1 : 0 cannot be"), (float("nan"), "cannot be"), (0.5, "the sheets would be")):
        with pytest.raises(SurveyError, match=said):
            write_profile_sheets(profile, tmp_path / "p.pdf", ProfileSheet(scale=scale))
    with pytest.raises(SurveyError, match=r"does not fit on A4.* Choose 1 : ") as caught:
        write_profile_sheets(profile, tmp_path / "p.pdf", ProfileSheet(height_scale=20))
    fit = float(re.search(r"Choose 1 : ([\d.]+)", str(caught.value)).group(1))
    assert write_profile_sheets(profile, tmp_path / "p.pdf", ProfileSheet(height_scale=fit)) == 2
    sections = cut_sections(line, np.array([20.0]), 30.0, 30.0, surfaces)
    with pytest.raises(SurveyError, match=r"cross-section at station 1\+020.00 does not fit on A4") as caught:
        write_section_sheets(sections, tmp_path / "s.pdf", SectionSheet(scale=100))
    fit = float(re.search(r"Choose 1 : ([\d.]+)", str(caught.value)).group(1))
    assert write_section_sheets(sections, tmp_path / "s.pdf", SectionSheet(scale=fit)) == 1
    with pytest.raises(SurveyError, match="cannot be written"):
        write_profile_sheets(profile, tmp_path / "nowhere" / "p.pdf")


def test_many_pages_cover_the_line_without_overlap(surfaces):
    line = make_alignment(ORIGIN + PATH, "Hill Road")
    with page_style():
        pages = list(profile_pages(make_profile(line, surfaces), ProfileSheet(scale=100)))
    assert len(pages) == 7
    shown = [t.get_text() for page in pages for t in page.axes.texts if re.fullmatch(r"0\+\d{3}\.\d\d", t.get_text())]
    assert shown[0] == "0+000.00"
    assert shown[-1] == f"0+{line.length:06.2f}"
    assert len(shown) - len(set(shown)) == len(pages) - 1  # each page begins where the last has ended


@pytest.mark.parametrize(
    ("length", "step"), [(1.0, 1), (1.1, 2), (2.0, 2), (2.1, 5), (5.01, 10), (0.03, 0.05), (99, 100)]
)
def test_round_steps(length, step):
    assert nice_above(length) == pytest.approx(step)
