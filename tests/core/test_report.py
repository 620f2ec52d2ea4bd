"""The report: whole, escaped, the same every time, and readable without eyes or mouse."""

import base64
import json
import re
from dataclasses import replace
from html.parser import HTMLParser
from io import BytesIO
from xml.etree import ElementTree

import matplotlib.image
import numpy as np
import pytest
from matplotlib.figure import Figure

from plugin.core.contours.lines import ContourOptions
from plugin.core.contours.sheet import SheetOptions
from plugin.core.contours.spots import find_spots
from plugin.core.job.run import compute
from plugin.core.job.settings import JobSettings
from plugin.core.report import drawing, figures, surface_maps, surface_sections
from plugin.core.report.html import report_html, write_report
from plugin.core.report.labels import Words, nice_step, number, significant
from plugin.core.report.measures import slopes, weighted_median
from plugin.core.report.room import Room
from plugin.core.report.surface_maps import FINDING_NAMES
from plugin.core.surface import edits as edits_module
from plugin.core.surface.build import SurfaceOptions
from plugin.core.surface.crossings import CrossingRule
from plugin.core.surface.findings import FindingKind
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
    return compute(
        JobSettings(survey(folder / name, sigma), folder, options, "EPSG:25832", check=False, find_lines=False)
    )


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
    assert len(outline.all("h2")) == 16
    assert len(outline.all("title")) == 1
    anchors = {attributes.get("id") for _, attributes, _ in outline.elements}
    links = [link["href"][1:] for link in outline.all("a")]
    assert len(links) == 16
    assert set(links) <= anchors


def test_figures_can_be_heard(outline):
    alts = [image["alt"] for image in outline.all("img")]
    assert len(alts) == 7
    assert all(len(alt) > 40 for alt in alts)
    assert len(outline.all("figcaption")) == 7


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
    supported = result.quality.interval
    assert supported.rmse >= (2 / 3) ** 0.5 * sigma / 1000
    assert supported.interval == pytest.approx(3 * supported.rmse)  # ASPRS 2014, annex B: interval = 3 RMSEz
    assert f"Smallest contour interval the data support: {supported.usual:g} m" in text
    assert "By that rule the survey supports the interval of 0.1 m." in text


def test_an_interval_finer_than_the_noise_is_said_to_be_so(tmp_path):
    fine = JobSettings(survey(tmp_path / "a.csv"), tmp_path, ContourOptions(0.02), "EPSG:25832", check=False)
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


# Surface: findings, slopes, edits, thinning


def text_of(result):
    return " ".join(" ".join(Outline(report_html(result, Words())).text).split())


@pytest.fixture(scope="module")
def whole(tmp_path_factory):
    """A survey with a spike, edited, finished for a sheet and thinned."""
    folder = tmp_path_factory.mktemp("whole")
    path = survey(folder / "field.csv")
    path.write_text(path.read_text(encoding="utf-8").replace("600012,5700012,", "600012,5700012,1"), encoding="utf-8")
    rows = [
        {"edit": "add_point", "place": [600007.3, 5700013.6], "height": 50.5, "note": EVIL},
        {"edit": "swap_edge", "place": [600000.0, 5800000.0]},
    ]
    edits = folder / "edits.json"
    edits.write_text(json.dumps({"format": "hummock edits", "version": 1, "edits": rows}), encoding="utf-8")
    settings = JobSettings(
        path, folder, ContourOptions(0.1), "EPSG:25832", check=False, find_lines=False, edits=edits,
        sheet=SheetOptions(0.2, 0.004),
        thin=0.05, dem=1.0, surface=SurfaceOptions(max_rim_angle=165.0, max_rim_radius=40.0),
    )  # fmt: skip
    return compute(settings)


def test_findings_are_told_with_place_and_text(whole):
    text = text_of(whole)
    count = len(whole.findings)
    assert any(f.kind is FindingKind.SPIKE for f in whole.findings)
    assert f"Findings by kind, the greatest value first: {count} of {count}" in text
    assert "600 012.00 5 700 012.00" in text
    assert "Spike at E 600012.000 N 5700012.000" in text


def test_without_findings_the_report_says_what_was_looked_for(result):
    text = text_of(replace(result, findings=()))
    assert "spikes, and points beside lines at another height: none were found" in text
    assert "none were found" not in text_of(result)


def test_edits_are_told_with_their_outcome(whole):
    text = text_of(whole)
    assert "Edits by hand from edits.json: 1 of 2 applied" in text
    assert re.search(r"1 point added .{0,60} applied 2 edge swapped not applied Edit 2 \(swap_edge\)", text)
    assert EVIL in text


def test_limits_of_the_rim_are_told(whole, result):
    text = text_of(whole)
    assert "rim: widest angle allowed opposite an outer edge 165 °" in text
    assert "rim: widest circumcircle allowed (radius) 40 m" in text
    assert "rim: longest edge" not in text
    assert "rim: widest" not in text_of(result)


def test_slope_classes_add_up_to_the_surface(result):
    text = text_of(result)
    rows = re.findall(r"(\d[\d.]* to [\d.]+ %|over [\d.]+ %) ([\d.\u202f]+) ([\d.\u202f]+) [\d.]+ ", text)
    assert [row[0] for row in rows] == [
        "0 to 1 %", "1 to 2 %", "2 to 5 %", "5 to 8.33 %", "8.33 to 20 %", "20 to 50 %", "over 50 %",
    ]  # fmt: skip
    plan, slope = (sum(float(row[k].replace("\u202f", "")) for row in rows) for k in (1, 2))
    tin = result.surface.tin
    assert plan == pytest.approx(tin.plan_area, abs=0.5)
    corner = tin.corners()
    cross = np.cross(corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0])
    assert slope == pytest.approx(0.5 * np.linalg.norm(cross, axis=1).sum(), abs=0.5)


def test_thinning_tells_its_achieved_error(whole):
    off = whole.thinned.largest_difference
    assert f"largest difference found {significant(off * 1000)} mm, at E" in text_of(whole)
    assert "greedy insertion by M. Garland and P. S. Heckbert" in text_of(whole)


@pytest.mark.parametrize("east", [548355.2, 548356.0, 548357.5])
def test_the_coordinates_along_a_map_are_within_its_figure(east):
    figure, axes = drawing.map_axes((548225.0, 5712384.0, east, 5712488.0), LengthUnit.METRE, Words())
    figure.canvas.draw()
    for label in axes.get_xticklabels():
        assert label.get_window_extent().x1 <= figure.bbox.x1


def test_the_sheet_is_said_to_be_for_drawing(whole, result):
    text = text_of(whole)
    assert "heights were moved by at most" in text
    assert f"lines by at most {whole.sheet.shifted:.3f} m in plan (allowed: 0.2 m)" in text
    assert "The map shows the exact contours" in text_of(result)
    assert "Taubin" not in text_of(result)


@pytest.mark.parametrize("rule", list(CrossingRule))
def test_every_rule_of_crossings_and_every_kind_has_its_words(rule):
    assert rule in surface_sections._CROSSING_RULES
    assert set(surface_sections._EDIT_NAMES) == {kind for kind, _, _ in edits_module._KINDS}
    assert set(FINDING_NAMES) == set(FindingKind) == set(surface_maps._MARKS)


# Room for text on maps


def boxes_apart(one, other):
    return np.any(np.abs(one[0] - other[0]) >= one[1] + other[1])


def test_texts_on_a_map_never_overlap():
    rng = np.random.default_rng(4)
    figure = Figure(figsize=(5, 4))
    axes = figure.add_axes([0.1, 0.1, 0.8, 0.8])
    axes.set_xlim(600000, 600100)
    axes.set_ylim(5700000, 5700070)
    axes.set_aspect("equal")
    room = Room(axes)
    places = np.column_stack([600000 + 100 * rng.random(150), 5700000 + 70 * rng.random(150)])
    room.take(places, 3.0)
    assert not room.free(places, 0.0).any()
    assert room.free(np.array([[600099.0, 5700500.0]]), 3.0).all()
    half = np.array([11.0, 3.5])
    boxes = []
    for place in places:
        offset = room.beside(place, *(2 * half))
        if offset is not None:
            boxes.append((room.points(place[None])[0] + offset, half))
    assert 20 < len(boxes) < 150
    for k, one in enumerate(boxes):
        assert all(boxes_apart(one, other) for other in boxes[:k])
        assert all(boxes_apart(one, (mark, np.full(2, 1.5))) for mark in room.points(places))


def test_the_marks_of_findings_are_on_the_map(whole):
    _, data = image(surface_maps.findings_map(whole.surface.tin, whole.findings, 50, Words()))
    pixels = matplotlib.image.imread(BytesIO(data))[..., :3]
    colors = {surface_maps._MARKS[finding.kind][1] for finding in whole.findings}
    for color in colors:
        wanted = np.array([int(color[i : i + 2], 16) / 255 for i in (1, 3, 5)])
        assert (np.abs(pixels - wanted).max(axis=2) < 0.02).sum() > 20, color


# Figures


def image(picture):
    kind, data = picture.uri.split(",", 1)
    return kind, base64.b64decode(data)


def test_the_map_is_a_picture_with_contours_on_it(result):
    kind, data = image(
        figures.site_map(result.surface.tin, result.contours, find_spots(result.surface.tin, 0.1), Words())
    )
    assert kind == "data:image/png;base64"
    pixels = matplotlib.image.imread(BytesIO(data))[..., :3]
    assert pixels.shape[1] > 800
    for color in (drawing.BROWN, drawing.DARK_BROWN, drawing.TEAL):
        wanted = np.array([int(color[i : i + 2], 16) / 255 for i in (1, 3, 5)])
        assert (np.abs(pixels - wanted).max(axis=2) < 0.02).sum() > 20, color


def test_large_surfaces_are_drawn_by_cells_and_look_alike(result, monkeypatch):
    """The same surface drawn triangle by triangle and by cells: nearly the same shades."""
    pixels = []
    for limit in (10**6, 50):
        monkeypatch.setattr(drawing, "_DRAWN_ONE_BY_ONE", limit)
        _, data = image(
            figures.site_map(result.surface.tin, result.contours, find_spots(result.surface.tin, 0.1), Words())
        )
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
    shade, times = drawing.hillshade(flat)
    assert shade[0] == pytest.approx(0.5)
    assert times == 1.0
    facing, away = flat.copy(), flat.copy()
    facing[0, 1, 2], facing[0, 2, 2] = 0.5**0.5, -(0.5**0.5)  # falls to the north-west at 45 degrees
    away[0, 1, 2], away[0, 2, 2] = -(0.5**0.5), 0.5**0.5
    shade, times = drawing.hillshade(np.concatenate([facing, away, flat]))
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


def test_slopes_of_a_plane(result):
    """A plane of known slope."""
    tin = result.surface.tin
    tilted = tin.vertices.copy()
    tilted[:, 2] = 0.03 * tilted[:, 0] - 0.04 * tilted[:, 1]
    assert slopes(type(tin)(**{**vars(tin), "vertices": tilted})) == pytest.approx(0.05)


def test_weighted_median():
    assert weighted_median(np.array([3.0, 1.0, 2.0]), np.array([10.0, 1.0, 1.0])) == 3.0
    assert weighted_median(np.array([3.0, 1.0, 2.0]), np.ones(3)) == 2.0
