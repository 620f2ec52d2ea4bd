"""A file that names another CRS than the one chosen is asked about, with both as answers."""

import numpy as np
import pytest
from pyproj import CRS, Transformer

from plugin.core.georeference.control_file import read_control
from plugin.core.georeference.crs_said import conflict
from plugin.core.georeference.intake import take_in
from plugin.core.georeference.intake_options import IntakeOptions, with_answer
from plugin.core.points.questions import QuestionError, Topic

UTM32 = CRS.from_epsg(25832)


def survey(tmp_path, above="", head="Pt,Easting,Northing,Z", cell=""):
    rows = [f"{i},{cell}{548240.1 + i * 0.5:.3f},{5712395.2 + i * 0.3:.3f},{90 + i * 0.01:.3f}" for i in range(20)]
    path = tmp_path / "survey.csv"
    path.write_text("\n".join([*above.splitlines(), head, *rows]) + "\n", encoding="utf-8")
    return path


CASES = [
    ("# CRS: ETRS89 / UTM zone 33N (EPSG:25833)", "Pt,Easting,Northing,Z", ""),
    ("Job 7  Zone: 33N", "Pt,Easting,Northing,Z", ""), ("# Central meridian 15 E", "Pt,Easting,Northing,Z", ""),
    ("", "Pt,Easting UTM33,Northing UTM33,Z", ""), ("", "Pt,Zone,Easting,Northing,Z", "33U,"),
    ("", "Pt,UTM Zone,Easting,Northing,Z", "33,"), ("", "Pt,CRS,Easting,Northing,Z", "EPSG:25833,"),
    ("", "Pt,EPSG,Easting,Northing,Z", "25833,"), ("", "Pt,E_25833,N_25833,Z", ""),
]  # fmt: skip


@pytest.mark.parametrize(("above", "head", "cell"), CASES)
def test_both_are_answers_and_each_is_obeyed(tmp_path, above, head, cell):
    path, options = survey(tmp_path, above, head, cell), IntakeOptions(crs=UTM32)
    with pytest.raises(QuestionError) as asked:
        take_in([path], options)
    question = asked.value.questions[0]
    assert question.topic is Topic.CRS
    assert [one.typed for one in question.answers] == ["--source-crs EPSG:25833", "--source-crs EPSG:25832"]
    assert all(one.place is not None for one in question.answers)
    own, chosen = (with_answer(options, one) for one in question.answers)
    assert take_in([path], chosen).survey.points.easting[0] == pytest.approx(548240.1)
    east, north = Transformer.from_crs(25833, 25832, always_xy=True).transform(548240.1, 5712395.2)
    points = take_in([path], own).survey.points
    assert (points.easting[0], points.northing[0]) == pytest.approx((east, north), abs=1e-3)


@pytest.mark.parametrize(
    "above",
    ["# UTM zone 32N ETRS89", "# Central meridian 9 E", "# from zone 33 to zone 32", "# EPSG:4258", "# Los 3, Teil 33"],
)
def test_what_agrees_or_says_nothing_is_not_asked(tmp_path, above):
    assert len(take_in([survey(tmp_path, above)], IntakeOptions(crs=UTM32)).survey.points) == 20


def test_codes_of_points_say_nothing_of_the_crs(tmp_path):
    path = survey(tmp_path)
    lines = path.read_text(encoding="utf-8").split()
    coded = [f"{line},{'zone 33' if i else 'Code'}" for i, line in enumerate(lines)]
    path.write_text("\n".join(coded), encoding="utf-8")
    assert len(take_in([path], IntakeOptions(crs=UTM32)).survey.points) == 20


def test_another_datum_is_asked_about_with_what_is_on_it(tmp_path):
    path = survey(tmp_path, "# Datum: OSGB36 National Grid")
    with pytest.raises(QuestionError) as asked:
        take_in([path], IntakeOptions(crs=UTM32))
    typed = [one.typed for one in asked.value.questions[0].answers]
    assert typed[-1] == "--source-crs EPSG:25832"
    east, north = np.array([400000.0, 400100.0]), np.array([300000.0, 300050.0])
    said = conflict(["# OSGB36"], UTM32, (east, north))
    assert 27700 in [other.to_epsg() for other in said.others]


@pytest.mark.parametrize("head", ["name,zone,easting,northing,height", "# UTM zone 33\nname,easting,northing,height"])
def test_control_that_names_another_zone_is_told(tmp_path, head):
    path = tmp_path / "control.csv"
    cell = "33," if "zone," in head else ""
    path.write_text(f"{head}\nA,{cell}548240,5712395,90\nB,{cell}548290,5712315,91\n", encoding="utf-8")
    said = [str(one) for one in read_control(path, None, UTM32).messages]
    assert any("zone 33" in one and "EPSG:25832" in one for one in said)


SAID = [
    "# CRS: EPSG:25833", "# UTM zone 33N", "EPSG:25833", "Coordinate system;ETRS89 / UTM zone 33N",
    "Projection: UTM zone 33, ETRS89",
]  # fmt: skip


@pytest.mark.parametrize("said", SAID)
@pytest.mark.parametrize("at", [11, 21])
@pytest.mark.parametrize("above", ["", "# CRS: EPSG:25832"])
def test_what_stands_between_or_below_the_points_is_asked_as_well(tmp_path, said, at, above):
    path, options = survey(tmp_path, above), IntakeOptions(crs=UTM32)
    lines = path.read_text(encoding="utf-8").splitlines()
    at += bool(above)
    path.write_text("\n".join([*lines[:at], said, *lines[at:]]) + "\n", encoding="utf-8")
    with pytest.raises(QuestionError) as asked:
        take_in([path], options)
    question = asked.value.questions[0]
    assert [one.typed for one in question.answers] == ["--source-crs EPSG:25833", "--source-crs EPSG:25832"]
    if above and "EPSG" in said:
        assert f"line {at + 1}, behind" in str(asked.value)
    assert len(take_in([path], with_answer(options, question.answers[1])).survey.points) == 20


@pytest.mark.parametrize("said", ["# CRS: EPSG:25832", "UTM zone 32N", "# from EPSG:25833 to EPSG:25832"])
@pytest.mark.parametrize("at", [11, 21])
def test_what_agrees_between_or_below_the_points_is_not_asked(tmp_path, said, at):
    path = survey(tmp_path)
    lines = path.read_text(encoding="utf-8").splitlines()
    path.write_text("\n".join([*lines[:at], said, *lines[at:]]) + "\n", encoding="utf-8")
    assert len(take_in([path], IntakeOptions(crs=UTM32)).survey.points) == 20


def test_the_code_of_each_point_is_asked_and_years_are_not(tmp_path):
    path, options = survey(tmp_path), IntakeOptions(crs=UTM32)
    rows = [line.split(",") for line in path.read_text(encoding="utf-8").split()[1:]]
    for code, asked in (("25833", True), ("25832", False)):
        lines = [f'{name},"SRID={code};POINT Z ({east} {north} {z})"' for name, east, north, z in rows]
        path.write_text("\n".join(["name,geom", *lines]), encoding="utf-8")
        if asked:
            with pytest.raises(QuestionError, match="SRID=25833"):
                take_in([path], options)
        else:
            assert len(take_in([path], options).survey.points) == 20
    assert len(take_in([survey(tmp_path, head="Pt,E_2023,N_2023,Z_2023")], options).survey.points) == 20
