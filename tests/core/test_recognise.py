"""Recognition of columns, units and axes: right or declared ambiguous, never silently wrong."""

import itertools

import numpy as np
import pytest
from pyproj import CRS

from plugin.core.messages import SurveyError
from plugin.core.points.delimited import read_points
from plugin.core.points.questions import Topic
from plugin.core.points.recognise import recognise
from plugin.core.units import LengthUnit
from tests.core.survey_forms import FOOT, HEADERS, SITES, degrees_text, forms, walk

COORDINATES = ("easting", "northing", "height")


@pytest.fixture(scope="module")
def matrix(tmp_path_factory):
    """Each file of the matrix with its path and what was recognised (an error for none)."""
    folder = tmp_path_factory.mktemp("forms")
    results = []
    for i, form in enumerate(forms()):
        path = folder / f"{i}.txt"
        path.write_bytes(form.raw)
        try:
            found = recognise(path, crs=form.crs)
        except SurveyError as error:
            found = error
        results.append((form, path, found))
    return results


def verdict(form, found):
    """right, ambiguous or wrong, by what the file is in truth."""
    if isinstance(found, SurveyError) or not found.decided:
        return "ambiguous"
    guess = found.guesses[0]
    right = all(guess.columns.get(role) == form.columns[role] for role in COORDINATES)
    right &= all(form.columns.get(role) == column for role, column in guess.columns.items())
    open_unit = any(one.topic is Topic.UNIT for one in found.questions)
    right &= open_unit or guess.unit is LengthUnit(form.unit)
    return "right" if right else "wrong"


def test_the_matrix_is_right_or_declared_ambiguous(matrix):
    verdicts = [verdict(form, found) for form, _, found in matrix]
    assert len(verdicts) >= 300
    wrong = [form.label for (form, _, _), said in zip(matrix, verdicts) if said == "wrong"]
    assert not wrong
    # Guards against a recognition that declares everything ambiguous.
    assert verdicts.count("right") > 0.35 * len(verdicts)


def test_with_a_crs_of_somewhere_else_nothing_is_silently_wrong(tmp_path):
    """The user names a wrong CRS: columns and unit are still right or asked for."""
    rng = np.random.default_rng(5)
    for form in forms(150, 3):
        path = write(tmp_path, "")
        path.write_bytes(form.raw)
        crs = CRS.from_epsg(SITES[rng.integers(len(SITES))][0])
        try:
            found = recognise(path, crs=crs)
        except SurveyError as error:
            found = error
        assert verdict(form, found) != "wrong", (crs.name, form.label)


def test_reading_the_matrix_gives_the_coordinates_or_asks(matrix):
    """What is read lies where it was walked; what cannot be decided is one line that says what to type."""
    read = 0
    for form, path, found in matrix[::3]:
        if isinstance(found, SurveyError) or not found.decided:
            with pytest.raises(SurveyError) as caught:
                read_points(path, crs=form.crs)
            assert "\n" not in str(caught.value)
            assert "--" in str(caught.value)
            continue
        points = read_points(path, crs=form.crs).points
        read += 1
        asked = {one.topic for one in found.questions}
        factor = 1.0 if Topic.UNIT not in asked else FOOT[form.unit] / found.guesses[0].unit.metres
        assert np.abs(points.easting * factor - form.easting_m).max() < 1e-3
        assert np.abs(points.northing * factor - form.northing_m).max() < 1e-3
        assert np.abs(points.height * factor - form.height_m).max() < 1e-3
    assert read > 30


@pytest.mark.parametrize("site", SITES, ids=lambda site: f"EPSG:{site[0]}")
@pytest.mark.parametrize("language", [key for key in HEADERS if key != "none"])
def test_words_alone_name_the_columns(tmp_path, site, language):
    """A walk in the unit of its CRS, columns in any order: the header's words are found in each language."""
    crs = CRS.from_epsg(site[0])
    metres = crs.axis_info[0].unit_conversion_factor
    east, north, height = (values / metres for values in walk(*site, 0.5, 40, 7))
    for words in HEADERS[language]:
        for order in (("easting", "northing", "height"), ("height", "northing", "easting")):
            columns = {"easting": east, "northing": north, "height": height}
            lines = [";".join(words[role].replace("{u}", "").strip() for role in order)]
            lines += [";".join(f"{columns[role][i]:.3f}" for role in order) for i in range(len(east))]
            path = tmp_path / "walk.txt"
            path.write_text("\n".join(lines), encoding="utf-8")
            found = recognise(path, crs=crs)
            if found.decided:
                assert found.guesses[0].columns == {role: i + 1 for i, role in enumerate(order)}
            else:  # x and y in a CRS whose area takes both
                assert language in ("xy", "yx")
                assert found.questions[0].topic is Topic.AXES
                told = [each.typed for each in found.questions[0].answers]
                assert any(f"easting={order.index('easting') + 1}" in option for option in told)


FORMS = list(itertools.product("d dm dms".split(), (True, False), (".", ","), (False, True)))  # noqa: SIM905


@pytest.mark.parametrize("site", SITES, ids=lambda site: f"EPSG:{site[0]}")
@pytest.mark.parametrize(("form", "letters", "decimal", "headed"), FORMS)
def test_degrees(tmp_path, site, form, letters, decimal, headed):
    """Latitude and longitude as decimal degrees, degrees and minutes, or with seconds, with letters and without."""
    epsg, lon, lat = site
    rng = np.random.default_rng(1)
    lons, lats = lon + np.cumsum(rng.normal(0, 5e-6, 30)), lat + np.cumsum(rng.normal(0, 5e-6, 30))
    lines = ["Point;Latitude;Longitude;Ellipsoidal height"] if headed else []
    for i in range(30):
        fields = [
            degrees_text(lats[i], form, "NS" * letters),
            degrees_text(lons[i], form, "EW" * letters),
            f"{545 + i / 7:.3f}",
        ]
        lines.append(";".join([f"P{i}", *(field.replace(".", decimal) for field in fields)]))
    path = tmp_path / "degrees.txt"
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    if not headed and form == "d" and not letters:
        found = recognise(path, crs=CRS.from_epsg(epsg))
        if not found.decided:  # small numbers, which lie in the area of use as metres too
            assert any("longitude=3" in one.value for one in found.questions[0].answers)
            return
    result = read_points(path, crs=CRS.from_epsg(epsg), geographic=True)
    assert result.account.points == 30
    assert np.abs(result.geographic.latitude - lats).max() < 1e-8
    assert np.abs(result.geographic.longitude - lons).max() < 1e-8
    assert result.geographic.heights.value == ("ellipsoidal" if headed else "unknown")
    assert np.isnan(result.points.easting).all()
    with pytest.raises(SurveyError) as caught:
        read_points(path, crs=CRS.from_epsg(epsg))
    assert caught.value.code == "points.geographic"


def write(tmp_path, text):
    path = tmp_path / "file.txt"
    path.write_text(text, encoding="utf-8")
    return path


def test_a_header_that_the_area_of_use_contradicts_is_asked(tmp_path):
    rows = "".join(f"{5712395 + i}.25;{548240 + i}.75;91.5\n" for i in range(9))
    path = write(tmp_path, "Easting;Northing;Height\n" + rows)
    with pytest.raises(SurveyError) as caught:
        read_points(path, crs=CRS.from_epsg(25832))
    assert "northing=1,easting=2,height=3" in str(caught.value)
    assert read_points(path, crs=CRS.from_epsg(25832), columns="northing,easting,height").points.easting[0] == 548240.75
    assert read_points(path, unit=LengthUnit.METRE).points.easting[0] == 5712395.25  # nothing contradicts it


def test_the_area_of_use_decides_where_no_header_does(tmp_path):
    rows = "".join(f"{1001 + i};{5712395 + i}.25;{548240 + i}.75;91.5{i};KB\n" for i in range(9))
    path = write(tmp_path, rows)
    read = read_points(path, crs=CRS.from_epsg(25832))
    assert read.format.columns == {"name": 1, "northing": 2, "easting": 3, "height": 4, "code": 5}
    told = [str(note) for note in read.messages]
    assert any("area of use" in one for one in told)
    assert any("read as name=1,northing=2,easting=3,height=4,code=5" in one for one in told)
    asked = recognise(path)
    assert not asked.decided
    assert len(asked.guesses) >= 2
    likelihoods = [guess.likelihood for guess in asked.guesses]
    assert likelihoods == sorted(likelihoods, reverse=True)
    assert all(guess.reasons for guess in asked.guesses[:2])


def test_two_columns_that_may_be_heights_are_asked(tmp_path):
    rows = "".join(f"P{i};{548240 + i}.25;{5712395 + i}.75;91.5{i};137.0{i}\n" for i in range(9))
    with pytest.raises(SurveyError) as caught:
        read_points(write(tmp_path, rows), crs=CRS.from_epsg(25832))
    assert "4, 5" in str(caught.value)
    assert "height=4" in str(caught.value)
    assert "height=5" in str(caught.value)


def test_ellipsoidal_heights_beside_others_are_kept(tmp_path):
    text = "N°;Est;Nord;Altitude;Hauteur ellipsoïdale;Hauteur canne\n" + "1;548240.25;5712395.5;91.5;137.25;2.0\n" * 2
    with pytest.raises(SurveyError, match="--heights-of ground"):
        read_points(write(tmp_path, text), crs=CRS.from_epsg(25832))
    read = read_points(write(tmp_path, text), crs=CRS.from_epsg(25832), heights_of="ground")
    assert read.points.height.tolist() == [91.5, 91.5]
    assert read.points.extra["ellipsoidal_height"].tolist() == [137.25, 137.25]
    assert read.points.extra["pole_height"].tolist() == [2.0, 2.0]
    assert read.points.name.tolist() == ["1", "1"]


@pytest.mark.parametrize(("words", "lon", "expected"), [
    ("Punkt;Breite;Länge;Höhe", "11°31'00\"O", 11 + 31 / 60),
    ("Punto;Latitud;Longitud;Altura", "11°31'00\"O", -11 - 31 / 60),
    ("Point;Latitude;Longitude;Altitude", "11°31'00\"O", None),
])  # fmt: skip
def test_the_letter_o(tmp_path, words, lon, expected):
    """Ost is east, Ouest and Oeste are west (dictionaries); which is asked where the header does not tell."""
    path = write(tmp_path, f"{words}\nP1;48°07'02\"N;{lon};545.4\nP2;48°07'03\"N;{lon};545.5\n")
    if expected is None:
        with pytest.raises(SurveyError) as caught:
            read_points(path.rename(tmp_path / "o.txt"), geographic=True)
        assert "Ouest" in str(caught.value)
    else:
        assert read_points(path, geographic=True).geographic.longitude[0] == pytest.approx(expected, abs=1e-12)


def test_feet_in_a_metric_crs_are_asked(tmp_path):
    foot = 0.3048
    rows = "".join(f"{(548240 + i) / foot:.3f};{(5712395 + 2 * i) / foot:.3f};{91.5 / foot:.3f}\n" for i in range(20))
    with pytest.raises(SurveyError) as caught:
        read_points(write(tmp_path, "E;N;Z\n" + rows), crs=CRS.from_epsg(25832))
    assert "--unit ft" in str(caught.value)
    read = read_points(write(tmp_path, "E;N;Z\n" + rows), crs=CRS.from_epsg(25832), unit=LengthUnit.FOOT)
    assert read.points.easting[0] == pytest.approx(548240, abs=1e-3)


def test_a_walk_in_feet_on_a_local_grid_is_asked(tmp_path):
    """A point every half metre is a point every 1.64 ft (NIST SP 811: 0.3048 m)."""
    rows = "".join(f"{1000 + 1.64 * i:.3f};{2000 + 0.1 * (i % 3):.3f};300.1\n" for i in range(40))
    with pytest.raises(SurveyError) as caught:
        read_points(write(tmp_path, "E;N;Z\n" + rows))
    assert "--unit" in str(caught.value)


def test_every_column_has_ranked_roles(tmp_path):
    rows = "".join(
        f"{1001 + i};{548240 + i}.25;{5712395 + i}.75;91.5{i};0.012;{18 + i % 2};2025-04-09T07:06:0{i}Z\n"
        for i in range(9)
    )
    found = recognise(write(tmp_path, rows), crs=CRS.from_epsg(25832))
    first = [guesses[0].role for guesses in found.columns]
    assert (first[0], first[6]) == ("name", "time")
    assert "satellites" in [guess.role for guess in found.columns[5]]
    assert {"sigma_h", "sigma_v"} <= {guess.role for guess in found.columns[4]}
    assert found.guesses[0].columns["time"] == 7


def test_other_comment_signs_are_found(tmp_path):
    text = "% made in the field\n% twice\nE;N;Z\n548240.5;5712395.5;91.5\n548241.5;5712395.5;91.5\n"
    read = read_points(write(tmp_path, text), crs=CRS.from_epsg(25832))
    assert (read.account.comments, read.account.header, read.account.points) == (2, 1, 2)


def test_whole_numbers_are_told_apart_too(tmp_path):
    rows = "".join(f"{i};{548240 + i};{5712395 - i};{91 + i % 3}\n" for i in range(20))
    read = read_points(write(tmp_path, rows), crs=CRS.from_epsg(25832))
    assert read.format.columns == {"name": 1, "easting": 2, "northing": 3, "height": 4}


def test_y_and_x_are_told_by_the_area_of_use(tmp_path):
    """X to the north, as in German-speaking countries' tables (common practice, no source)."""
    rows = "".join(f"{i};{548240 + i}.25;{5712395 - i}.5;91.{i}\n" for i in range(20))
    read = read_points(write(tmp_path, "Nr;Y;X;H\n" + rows), crs=CRS.from_epsg(25832))
    assert read.format.columns == {"name": 1, "easting": 2, "northing": 3, "height": 4}
    assert any(note.text.code == "points.took" for note in read.messages)
    assert not any("--columns" in str(note) for note in read.messages)


def test_a_height_whose_header_word_is_not_known_is_asked(tmp_path):
    path = write(tmp_path, "Nr;E;N;Undulation\n" + "1;548240.25;5712395.5;46.25\n" * 3)
    with pytest.raises(SurveyError) as caught:
        read_points(path, crs=CRS.from_epsg(25832))
    assert "'Undulation'" in str(caught.value)
    assert "height=4" in str(caught.value)


def test_feet_of_the_crs_are_read_and_the_doubt_is_said(tmp_path):
    """NIST SP 811: the two feet differ by 2 parts in a million."""
    foot = 1200 / 3937
    rows = "".join(f"{(300000 + i) / foot:.3f};{(60000 + i) / foot:.3f};{91.5 / foot:.3f}\n" for i in range(20))
    read = read_points(write(tmp_path, "E;N;Z\n" + rows), crs=CRS.from_epsg(2263))
    assert read.points.easting[0] == pytest.approx(300000, abs=1e-3)
    open_ones = [one for one in read.recognition.questions if one.topic is Topic.UNIT]
    assert len(open_ones) == 1
    assert not open_ones[0].stops
    assert any("international and U.S. survey foot" in str(note) for note in read.messages)


def test_positions_of_both_kinds_have_to_agree(tmp_path):
    rows = "".join(f"P{i},51.56{i:03d},9.69{i:03d},{547838 + i}.25,{5712395 - i}.5,91.5\n" for i in range(9))
    path = write(tmp_path, "id,lat,lon,E,N,H\n" + rows)
    read = read_points(path, crs=CRS.from_epsg(25832))
    assert read.points.easting[0] == 547838.25
    assert read.points.extra["latitude"][0] == 51.56
    path = write(tmp_path, path.read_text(encoding="utf-8").replace(",547", ",347"))
    with pytest.raises(SurveyError) as caught:
        read_points(path, crs=CRS.from_epsg(25832), geographic=True)
    assert "200 km away" in str(caught.value)
    assert "longitude=3" in str(caught.value)
