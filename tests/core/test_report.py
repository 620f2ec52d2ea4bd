"""The report: whole, escaped, the same every time, and readable without eyes or mouse."""

import base64
import re
from html.parser import HTMLParser
from io import BytesIO
from xml.etree import ElementTree

import matplotlib.image
import numpy as np
import pytest

from plugin.core.contours.lines import ContourOptions
from plugin.core.job import JobSettings, compute
from plugin.core.report import figures
from plugin.core.report.html import report_html, write_report
from plugin.core.report.labels import Words, nice_step, number, significant
from plugin.core.report.measures import plan_areas, slopes, weighted_median
from plugin.core.units import LengthUnit

EVIL = '<script>alert("1")</script>&amp;'


def survey(path, sigma=True):
    """A sloping field with a breakline, duplicates, broken lines and names that try to be markup."""
    rng = np.random.default_rng(5)
    lines = ["name,easting,northing,height,code,sigma_h,sigma_v" if sigma else "name,easting,northing,height,code"]
    for i in range(20):
        for j in range(20):
            z = 50 + 0.05 * i + 0.4 * np.sin(j / 3)
            tail = f",0.010,{rng.uniform(0.014, 0.018):.3f}" if sigma else ""
            lines.append(f"p{i}-{j},{600000 + i},{5700000 + j},{z:.3f},{tail}")
    tail = ",0.01,0.015" if sigma else ""
    lines += [f"{EVIL},600002.5,5700002.5,50.1,{EVIL}{tail}", f"k1,600004.5,5700001.5,50.3,KT 1 BEGIN{tail}"]
    lines += [f"k2,600004.5,5700017.5,50.3,KT 1 END{tail}", f"d,600000,5700000,50.2,{tail}", "# a comment", ""]
    lines += [f"{EVIL},600001,{EVIL},50,{tail}", "short,1"]
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    return path


def results(folder, name="field.csv", sigma=True, **more):
    options = ContourOptions(0.1, **more)
    return compute(JobSettings(survey(folder / name, sigma), folder, options, "EPSG:25832"))


@pytest.fixture(scope="module")
def result(tmp_path_factory):
    return results(tmp_path_factory.mktemp("report"), "a<b>&\"c'.csv")


@pytest.fixture(scope="module")
def html(result):
    return report_html(result, Words())


class Outline(HTMLParser):
    """Elements with their attributes and parents, and the text in them."""

    EMPTY = frozenset({"meta", "img", "br"})

    def __init__(self, html):
        super().__init__()
        self.open, self.elements, self.text = [], [], []
        self.feed(html)
        self.close()

    def handle_starttag(self, tag, attrs):
        self.elements.append((tag, dict(attrs), list(self.open)))
        if tag not in self.EMPTY:
            self.open.append(tag)

    def handle_endtag(self, tag):
        assert self.open[-1] == tag, f"</{tag}> closes <{self.open[-1]}>"
        self.open.pop()

    def handle_data(self, data):
        if self.open and self.open[-1] != "style":
            self.text.append(data)

    def all(self, tag):
        return [attributes for name, attributes, _ in self.elements if name == tag]


@pytest.fixture(scope="module")
def outline(html):
    return Outline(html)


def test_every_element_is_closed_in_its_parent(outline):
    assert outline.open == []
    assert len(outline.elements) > 100


def test_nothing_comes_from_elsewhere(html, outline):
    assert outline.all("script") == outline.all("link") == outline.all("iframe") == []
    assert all(image["src"].startswith("data:image/") for image in outline.all("img"))
    assert "http" not in re.sub(r'src="[^"]*"', "", html)


def test_input_is_escaped(html, outline):
    assert "<script" not in html
    text = "".join(outline.text)
    assert EVIL in text  # as the reader sees it: in the rejects and among the remarks
    assert "a<b>&\"c'.csv" in text


def test_the_language_and_the_headings_are_there(outline):
    assert outline.all("html")[0]["lang"] == "en"
    assert len(outline.all("h1")) == 1
    assert len(outline.all("h2")) == 9
    assert len(outline.all("title")) == 1
    anchors = {attributes.get("id") for _, attributes, _ in outline.elements}
    links = [link["href"][1:] for link in outline.all("a")]
    assert len(links) == 9
    assert set(links) <= anchors


def test_figures_can_be_heard(outline):
    alts = [image["alt"] for image in outline.all("img")]
    assert len(alts) == 4
    assert all(len(alt) > 40 for alt in alts)
    assert len(outline.all("figcaption")) == 4


def test_tables_say_what_their_cells_are(outline):
    assert len(outline.all("table")) == len(outline.all("caption")) >= 8
    headings = outline.all("th")
    assert all(heading.get("scope") in ("col", "row") for heading in headings)


def test_ids_are_used_once(outline):
    ids = [attributes["id"] for _, attributes, _ in outline.elements if "id" in attributes]
    assert len(ids) == len(set(ids))


def luminance(color):
    """Relative luminance, WCAG 2.1."""
    parts = [int(color[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    linear = [p / 12.92 if p <= 0.03928 else ((p + 0.055) / 1.055) ** 2.4 for p in parts]
    return float(np.dot(linear, [0.2126, 0.7152, 0.0722]))


@pytest.mark.parametrize(
    ("ink", "paper"), [("#252525", "#ffffff"), ("#404040", "#ffffff"), ("#01524b", "#ffffff"), ("#252525", "#fdf3e7")]
)
def test_text_stands_out_from_its_ground(html, ink, paper):
    """WCAG 2.1, success criterion 1.4.6: contrast of at least 7 to 1."""
    assert ink in html
    assert (luminance(paper) + 0.05) / (luminance(ink) + 0.05) >= 7.0


def test_the_account_of_lines_is_told(result, outline):
    text = " ".join(outline.text)
    account = result.survey.account
    assert (account.lines, account.points, account.rejects) == (409, 404, 2)
    assert re.search(r"points\s+404\s", text)
    assert re.search(r"rejected lines\s+2\s", text)
    assert re.search(r"together, the lines of the file\s+409\s", text)


def test_duplicates_are_told_with_their_rule(outline):
    text = " ".join(outline.text)
    assert "Places recorded more than once (equal to 0.1 mm in plan): 1." in text
    assert "the surface takes the mean height" in text
    assert "2, 406" in text or "2, 405" in text  # the lines of the file


def test_doubt_follows_from_the_claimed_noise(result, outline):
    """Standard deviation in the middle of a triangle: sigma over the root of three (independent corners)."""
    sigma = 1000 * float(np.median(result.points.sigma_v))
    text = " ".join(outline.text)
    assert f"a standard deviation of {significant(sigma / 3**0.5)} mm" in text
    least = significant(3 * sigma / 1000)  # ASPRS 2014, annex B: interval = 3 RMSEz
    assert f"intervals from {least} m" in text


def test_an_interval_finer_than_the_noise_is_said_to_be_so(tmp_path):
    fine = JobSettings(survey(tmp_path / "a.csv"), tmp_path, ContourOptions(0.02), "EPSG:25832")
    assert "is finer than the survey can support" in report_html(compute(fine), Words())


def test_without_claimed_noise_the_report_says_that_it_does_not_know(tmp_path):
    html = report_html(results(tmp_path, sigma=False), Words())
    assert "gives no standard deviations" in html
    assert "nan" not in re.sub(r'src="[^"]*"', "", html)


def test_heights_are_told_in_the_unit_of_the_contours(tmp_path):
    html = report_html(results(tmp_path, unit=LengthUnit.FOOT), Words())
    assert "Level (ft)" in html
    assert "0.1 ft" in html
    low = 49.6 / 0.3048  # NIST SP 811
    found = re.search(r"height of the surface</th><td>([0-9.]+) to ([0-9.]+) ft", html)
    assert float(found[1]) == pytest.approx(low, abs=0.05)


def test_the_report_is_the_same_every_time(result, tmp_path):
    write_report(result, tmp_path / "one.html")
    write_report(result, tmp_path / "two.html")
    assert (tmp_path / "one.html").read_bytes() == (tmp_path / "two.html").read_bytes()


def test_the_report_does_not_name_the_folder(html, result):
    assert str(result.survey.points.source).rsplit("/", 1)[0] not in html


def test_the_report_can_be_translated(result):
    words = Words(lambda english: english.replace("Contours", "Höhenlinien"))
    html = report_html(result, words, "de")
    assert '<html lang="de">' in html
    assert '<h2 id="contours-title">Höhenlinien</h2>' in html


# Figures


def image(picture):
    kind, data = picture.uri.split(",", 1)
    return kind, base64.b64decode(data)


def test_the_map_is_a_picture_with_contours_on_it(result):
    kind, data = image(figures.site_map(result.surface.tin, result.contours, Words()))
    assert kind == "data:image/png;base64"
    pixels = matplotlib.image.imread(BytesIO(data))[..., :3]
    assert pixels.shape[1] > 800
    for color in (figures.BROWN, figures.DARK_BROWN, figures.TEAL):
        wanted = np.array([int(color[i : i + 2], 16) / 255 for i in (1, 3, 5)])
        assert (np.abs(pixels - wanted).max(axis=2) < 0.02).sum() > 20, color


def test_large_surfaces_are_drawn_by_cells_and_look_alike(result, monkeypatch):
    """The same surface drawn triangle by triangle and by cells: nearly the same shades."""
    pixels = []
    for limit in (10**6, 50):
        monkeypatch.setattr(figures, "_DRAWN_ONE_BY_ONE", limit)
        _, data = image(figures.site_map(result.surface.tin, result.contours, Words()))
        pixels.append(matplotlib.image.imread(BytesIO(data))[..., :3])
    assert pixels[0].shape == pixels[1].shape
    assert np.abs(pixels[0] - pixels[1]).mean() < 0.02


def test_histograms_are_svg_and_count_every_value():
    steps = np.concatenate([np.full(90, 0.5), np.full(10, 7.0)])
    kind, data = image(figures.spacing_histogram(steps, LengthUnit.METRE, Words()))
    assert kind == "data:image/svg+xml;base64"
    assert ElementTree.fromstring(data).tag.endswith("svg")
    assert (steps >= figures.longest_shown(steps)).sum() == 10


@pytest.mark.parametrize("heights", [np.array([3.0]), np.full(5, -2.0), np.array([-1.0, 4000.0])])
def test_histograms_of_little_or_wide_data(heights):
    _, data = image(figures.height_histogram(heights, LengthUnit.METRE, Words()))
    assert ElementTree.fromstring(data).tag.endswith("svg")


def test_shading_of_planes():
    """Lambert: flat ground has half the brightness of ground square to the light, by the scale used here."""
    flat = np.array([[[0, 0, 0], [1, 0, 0], [0, 1, 0]]], float)
    shade, times = figures.hillshade(flat)
    assert shade[0] == pytest.approx(0.5)
    assert times == 1.0
    facing, away = flat.copy(), flat.copy()
    facing[0, 1, 2], facing[0, 2, 2] = 0.5**0.5, -(0.5**0.5)  # falls to the north-west at 45 degrees
    away[0, 1, 2], away[0, 2, 2] = -(0.5**0.5), 0.5**0.5
    shade, times = figures.hillshade(np.concatenate([facing, away, flat]))
    assert times == 1.0
    assert shade == pytest.approx([0.5**0.5, 0.0, 0.5])


# Numbers


@pytest.mark.parametrize(
    ("value", "decimals", "text"),
    [(1234567.891, 2, "1\u202f234\u202f567.89"), (-0.0004, 3, "0.000"), (-1.5, 1, "\u22121.5"), (float("nan"), 1, "–")],
)
def test_numbers(value, decimals, text):
    assert number(value, decimals) == text


@pytest.mark.parametrize(
    ("value", "text"), [(0.01634, "0.016"), (16.34, "16"), (163.4, "163"), (0.999, "1.0"), (0, "0")]
)
def test_significant_digits(value, text):
    assert significant(value) == text


@pytest.mark.parametrize(("length", "step"), [(7.0, 5.0), (5.0, 5.0), (2.1, 2.0), (0.19, 0.1), (1000.0, 1000.0)])
def test_nice_steps(length, step):
    assert nice_step(length) == pytest.approx(step)


def test_slopes_and_areas_of_a_plane(result):
    """A plane of known slope, and the plan area the TIN itself gives."""
    tin = result.surface.tin
    assert plan_areas(tin).sum() == pytest.approx(tin.plan_area)
    tilted = tin.vertices.copy()
    tilted[:, 2] = 0.03 * tilted[:, 0] - 0.04 * tilted[:, 1]
    assert slopes(type(tin)(**{**vars(tin), "vertices": tilted})) == pytest.approx(0.05)


def test_weighted_median():
    assert weighted_median(np.array([3.0, 1.0, 2.0]), np.array([10.0, 1.0, 1.0])) == 3.0
    assert weighted_median(np.array([3.0, 1.0, 2.0]), np.ones(3)) == 2.0
