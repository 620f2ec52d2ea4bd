"""Files read, brought into one CRS and merged: what is done is done on the user's word and told."""

from pathlib import Path

import numpy as np
import pytest
from pyproj import CRS, Transformer

from plugin.core.georeference.area import check_area, suggestion_names
from plugin.core.georeference.intake import take_in
from plugin.core.georeference.intake_options import IntakeOptions, parse_separation
from plugin.core.georeference.record import Step
from plugin.core.georeference.site import GroundOptions, GroundWay, between_ground_and_grid, parse_place
from plugin.core.messages import SurveyError
from plugin.core.points.columns import parse_columns
from plugin.core.points.geographic import HeightKind
from plugin.core.points.pointset import make_points
from plugin.core.points.questions import QuestionError
from plugin.core.units import LengthUnit

UTM32 = CRS.from_epsg(25832)
ETRS89 = CRS.from_epsg(4258)


def plan_lines(count=20, east=500000.0, north=5700000.0, height=100.0):
    return [f"p{i},{east + 0.5 * i:.3f},{north + 0.3 * i:.3f},{height + 0.01 * i:.3f},GR" for i in range(count)]


def write(path, lines, header="name,easting,northing,height,code"):
    path.write_text("\n".join([header, *lines]) + "\n", encoding="utf-8")
    return path


def checksum(body):
    value = 0
    for byte in body.encode():
        value ^= byte
    return f"${body}*{value:02X}"


def log(path, count=10, height=100.0, separation=46.0, lat=51.45, lon=9.0):
    """A receiver log on a line to the north; longitude 9 is the central meridian of UTM zone 32."""
    lines = []
    for i in range(count):
        degree = lat + i * 1e-5
        packed = f"{int(degree) * 100 + (degree - int(degree)) * 60:.7f}"
        east = f"{int(lon):03d}{(lon - int(lon)) * 60:010.7f}"
        time = f"10{i // 60:02d}{i % 60:02d}.00"
        lines.append(
            checksum(f"GPGGA,{time},{packed},N,{east},E,4,12,0.8,{height + i * 0.1:.3f},M,{separation:.3f},M,1.0,0001")
        )
        lines.append(checksum(f"GPGST,{time},0.01,0.01,0.01,0.0,0.010,0.010,0.020"))
    path.write_text("\r\n".join(lines) + "\r\n", encoding="ascii")
    return path


def test_plan_coordinates_stay_as_they_are(tmp_path):
    done = take_in([write(tmp_path / "a.csv", plan_lines())], IntakeOptions(crs=UTM32))
    assert done.records == ()
    assert done.messages == ()
    assert done.merged is None
    assert done.survey.points.easting[3] == 500001.5


def test_a_projected_source_is_transformed_and_told(tmp_path):
    """Zone 33 to zone 32 of one datum: projections alone, which PROJ does without a datum operation."""
    there = Transformer.from_crs(25832, 25833, always_xy=True)
    places = [there.transform(700000.0 + 0.5 * i, 5700000.0) for i in range(20)]
    lines = [f"p{i},{e:.4f},{n:.4f},100,GR" for i, (e, n) in enumerate(places)]
    done = take_in([write(tmp_path / "a.csv", lines)], IntakeOptions(crs=UTM32, source_crs=CRS.from_epsg(25833)))
    assert done.survey.points.easting == pytest.approx(700000.0 + 0.5 * np.arange(20), abs=1e-3)
    assert done.survey.points.crs == UTM32
    assert [record.step for record in done.records] == [Step.TRANSFORMED]
    assert "EPSG:25833" in str(done.statements[0])
    assert "accuracy stated by PROJ" in str(done.statements[0])


def test_a_log_lands_on_the_central_meridian_with_heights_as_sent(tmp_path):
    done = take_in([log(tmp_path / "walk.nmea")], IntakeOptions(crs=UTM32, source_crs=ETRS89, heights_of="antenna"))
    points = done.survey.points
    assert points.easting == pytest.approx(500000.0, abs=1e-3)
    assert points.height == pytest.approx(100.0 + 0.1 * np.arange(10))
    assert any("orthometric as sent" in str(said) for said in done.statements)
    assert done.survey.account.lines == 20


def test_the_datum_of_degrees_is_said_when_it_is_only_assumed(tmp_path):
    done = take_in([log(tmp_path / "walk.nmea")], IntakeOptions(crs=CRS.from_epsg(32632), heights_of="antenna"))
    assert any("EPSG:4326" in str(said) and "taken as" in str(said) for said in done.survey.messages)


def test_heights_of_a_log_with_a_geoid_of_the_user(tmp_path):
    """The receiver's own separation (46 m) is undone before that of the user (45.8 m) is taken off."""
    options = IntakeOptions(crs=UTM32, source_crs=ETRS89, separation=parse_separation("45.8"), heights_of="antenna")
    done = take_in([log(tmp_path / "walk.nmea")], options)
    assert done.survey.points.height == pytest.approx(100.2 + 0.1 * np.arange(10))
    said = " ".join(str(one) for one in done.statements)
    assert "as the receiver sent it" in said
    assert "45.800 m for the whole site" in said


def test_ellipsoidal_heights_of_a_log(tmp_path):
    options = IntakeOptions(crs=UTM32, source_crs=ETRS89, heights=HeightKind.ELLIPSOIDAL, heights_of="antenna")
    done = take_in([log(tmp_path / "walk.nmea")], options)
    assert done.survey.points.height == pytest.approx(146.0 + 0.1 * np.arange(10))


def test_heights_of_a_text_file_and_a_constant(tmp_path):
    file = write(tmp_path / "a.csv", plan_lines(height=146.0))
    done = take_in([file], IntakeOptions(crs=UTM32, separation=parse_separation("46")))
    assert done.survey.points.height[0] == pytest.approx(100.0)
    said = IntakeOptions(crs=UTM32, separation=parse_separation("46"), heights_are=HeightKind.ORTHOMETRIC)
    with pytest.raises(SurveyError, match="counted twice"):
        take_in([file], said)
    up = IntakeOptions(crs=UTM32, separation=parse_separation("46"), heights=HeightKind.ELLIPSOIDAL)
    assert take_in([file], up).survey.points.height[0] == pytest.approx(192.0)


def test_another_kind_of_height_needs_a_separation(tmp_path):
    file = write(tmp_path / "a.csv", plan_lines())
    with pytest.raises(SurveyError, match=r"a\.csv: ellipsoidal heights are wanted .* of a kind that nothing says"):
        take_in([file], IntakeOptions(crs=UTM32, heights=HeightKind.ELLIPSOIDAL))


def test_exchanged_columns_are_asked_about_and_exchanged_on_the_users_word_only(tmp_path):
    file = write(tmp_path / "a.csv", plan_lines(), header="name,northing,easting,height,code")
    columns = parse_columns("name,northing,easting,height,code")
    with pytest.raises(
        QuestionError, match=r"20 of 20 points lie far outside .* --correct swapped \(.*51\.45"
    ) as raised:
        take_in([file], IntakeOptions(crs=UTM32, columns=columns))
    assert [answer.value for answer in raised.value.questions[0].answers] == ["swapped", "as-read"]
    done = take_in([file], IntakeOptions(crs=UTM32, columns=columns, correct="as-read"))
    assert done.survey.points.easting[0] == 5700000.0
    assert "stay where they are" in str(done.messages[0])
    told = [str(said) for said in take_in([file], IntakeOptions(crs=UTM32, columns=columns, ask=False)).messages]
    assert told[0].startswith("20 of 20 points")
    assert any("easting and northing are exchanged" in said for said in told)
    assert told[-1].startswith("To have it read so, repeat with --correct swapped")
    mended = take_in([file], IntakeOptions(crs=UTM32, columns=columns, correct="swapped"))
    assert mended.survey.points.easting[0] == 500000.0
    assert not mended.areas[0].outside.any()
    assert mended.areas_read[0].outside.all()
    assert any("20 of 20 points were read otherwise" in str(said) for said in mended.statements)
    with pytest.raises(SurveyError, match=r"a\.csv: 'zone' is no cause .*swapped"):
        take_in([file], IntakeOptions(crs=UTM32, columns=columns, correct="zone"))


def test_a_correction_without_need_is_refused(tmp_path):
    with pytest.raises(SurveyError, match="'swapped' is not applied"):
        take_in([write(tmp_path / "a.csv", plan_lines())], IntakeOptions(crs=UTM32, correct="swapped"))


def test_every_suggestion_has_a_name_of_its_own():
    for east, north in (
        (5700000.0, 500000.0),
        (32500000.0, 5700000.0),
        (1640419.9, 18700787.4),
        (-200000.0, 5700000.0),
    ):
        points = make_points(east + np.arange(5.0), north + np.arange(5.0), np.full(5, 1.0), crs=UTM32)
        check = check_area(points)
        names = suggestion_names(check)
        assert names
        assert len(set(names)) == len(names) == len(check.suggestions)
        assert not any(" " in name for name in names)


def test_a_source_in_degrees_for_plan_coordinates_is_refused_and_the_other_way_round(tmp_path):
    with pytest.raises(SurveyError, match=r"a\.csv: its columns hold eastings"):
        take_in([write(tmp_path / "a.csv", plan_lines())], IntakeOptions(crs=UTM32, source_crs=ETRS89))
    with pytest.raises(SurveyError, match="its positions are in degrees"):
        take_in(
            [log(tmp_path / "l.nmea")], IntakeOptions(crs=UTM32, source_crs=CRS.from_epsg(25833), heights_of="antenna")
        )


def test_days_of_text_and_log_become_one_survey(tmp_path):
    lines = plan_lines(5, east=500000.0, north=5700100.0)
    day = write(tmp_path / "day1.csv", [*lines, "broken,line"])
    done = take_in([day, log(tmp_path / "day2.nmea")], IntakeOptions(crs=UTM32, heights_of="antenna"))
    points = done.survey.points
    assert len(points) == 15
    assert set(points.extra["source"]) == {"day1.csv", "day2.nmea"}
    assert done.survey.account.lines == 7 + 20
    assert done.survey.rejects.source.tolist() == ["day1.csv"]
    assert done.merged is not None
    assert len(done.files) == 2


def test_a_compound_target_takes_the_unit_of_its_heights(tmp_path):
    """EPSG:2263+6360 has US survey feet in plan and height; the file is said to give its heights in metres."""
    crs = CRS.from_user_input("EPSG:2263+6360")
    file = write(tmp_path / "a.csv", plan_lines(20, 984250.0, 196850.0, 328.0))
    done = take_in([file], IntakeOptions(crs=crs, height_unit=LengthUnit.METRE, unit=LengthUnit.US_SURVEY_FOOT))
    assert done.survey.points.easting[0] == pytest.approx(984250.0 * 1200 / 3937)
    assert done.survey.points.height[0] == 328.0


def test_grid_of_geoid_separations_by_its_path(tmp_path):
    with pytest.raises(SurveyError, match=r"none\.gtx"):
        take_in(
            [write(tmp_path / "a.csv", plan_lines())],
            IntakeOptions(crs=UTM32, separation=parse_separation(str(Path(tmp_path) / "none.gtx"))),
        )
    with pytest.raises(SurveyError, match="--geoid is empty"):
        parse_separation(" ")


def test_to_ground_and_back_about_one_origin():
    rng = np.random.default_rng(4)
    points = make_points(
        500000 + rng.uniform(0, 900, 30), 5700000 + rng.uniform(0, 900, 30), rng.uniform(300, 310, 30), crs=UTM32
    )
    ground = between_ground_and_grid(points, GroundOptions(GroundWay.TO_GROUND, (500400.0, 5700400.0)), UTM32)
    back = between_ground_and_grid(ground.points, GroundOptions(GroundWay.TO_GRID, (500400.0, 5700400.0)), UTM32)
    assert back.points.easting == pytest.approx(points.easting, abs=1e-6)
    assert ground.points.crs is None
    with pytest.raises(SurveyError, match="--ground-origin"):
        between_ground_and_grid(ground.points, GroundOptions(GroundWay.TO_GRID), UTM32)
    with pytest.raises(SurveyError, match="not a local grid"):
        between_ground_and_grid(ground.points, GroundOptions(GroundWay.TO_GRID), None)


@pytest.mark.parametrize("word", ["1", "1,2,3", "a,b", "", "nan,1", "1e15,1"])
def test_a_place_is_two_numbers(word):
    assert parse_place("500000,5.7e6", "--ground-origin") == (500000.0, 5700000.0)
    with pytest.raises(SurveyError, match="--ground-origin must be two numbers"):
        parse_place(word, "--ground-origin")
