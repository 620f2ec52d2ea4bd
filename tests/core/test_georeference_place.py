"""Surveys in degrees brought to the CRS of the job."""

import numpy as np
import pytest
from pyproj import CRS, Transformer

from plugin.core.__main__ import main
from plugin.core.georeference.crs import geographic_crs
from plugin.core.georeference.place import place_survey
from plugin.core.messages import SurveyError
from plugin.core.points.delimited import read_points
from plugin.core.points.geographic import HeightKind
from plugin.core.points.nmea import read_nmea
from tests.core.test_nmea import gga, gst, zda

UTM = CRS.from_epsg(25832)


@pytest.fixture
def log(tmp_path):
    """A walk of 60 epochs beside each other, as a receiver log."""
    path = tmp_path / "walk.nmea"
    lines = [zda("070600.00")]
    for i in range(60):
        clock = f"0706{i:02d}.00"
        lat, lon = f"4807.{380000 + 2700 * (i % 8):07d}", f"01131.{40000 * (i // 8):07d}"
        lines += [gga(clock, lat=lat, lon=lon, height=f"{545 + i / 50:.3f}"), gst(clock)]
    path.write_text("\n".join(lines) + "\n", encoding="ascii")
    return path


def test_positions_are_those_of_pyproj(log):
    read = read_nmea(log, heights_of="antenna")
    placed, record = place_survey(read, UTM)
    expected = Transformer.from_crs("EPSG:4326", UTM, always_xy=True).transform(
        read.geographic.longitude, read.geographic.latitude
    )
    assert np.abs(placed.points.easting - expected[0]).max() < 1e-6
    assert np.abs(placed.points.northing - expected[1]).max() < 1e-6
    assert np.array_equal(placed.points.height, read.points.height)
    assert placed.points.crs == UTM
    assert placed.geographic is None
    assert placed.points.time.tolist() == read.points.time.tolist()
    codes = [note.text.code for note in placed.messages]
    assert "place.assumed" in codes
    assert "transform.done" in codes
    assert record.target_crs == UTM
    said, _ = place_survey(read, UTM, source=CRS.from_epsg(4258))
    assert "place.assumed" not in [note.text.code for note in said.messages]
    assert np.abs(said.points.easting - placed.points.easting).max() < 2.0


def test_plan_coordinates_come_back_as_they_are(tmp_path):
    path = tmp_path / "plan.csv"
    path.write_text("name,easting,northing,height\nP1,548240.5,5712395.5,91.5\n", encoding="utf-8")
    read = read_points(path, crs=UTM)
    assert place_survey(read, UTM) == (read, None)


def test_a_local_grid_takes_no_degrees(log):
    with pytest.raises(SurveyError) as caught:
        place_survey(read_nmea(log, heights_of="antenna"), None)
    assert caught.value.code == "place.no_target"


def test_ellipsoidal_heights_are_said_to_be(log):
    placed, _ = place_survey(read_nmea(log, heights=HeightKind.ELLIPSOIDAL, heights_of="antenna"), UTM)
    assert placed.points.height[0] == pytest.approx(545.0 + 46.9)
    assert "transform.ellipsoidal_kept" in [note.text.code for note in placed.messages]


@pytest.mark.parametrize(("text", "code"), [("EPSG:25832", "not_geographic"), ("nowhere", "not_understood")])
def test_words_that_are_no_geographic_crs(text, code):
    with pytest.raises(SurveyError) as caught:
        geographic_crs(text)
    assert caught.value.code == "crs." + code
    assert geographic_crs("4258") == CRS.from_epsg(4258)
    assert geographic_crs(" ") is None


def test_the_main_job_takes_a_receiver_log(log, tmp_path, capsys):
    out = tmp_path / "out"
    keep = ["--heights-of", "antenna"]
    assert main([str(log), "--crs", "EPSG:25832", "--interval", "0.25", "--out", str(out), *keep]) == 0
    assert "\nPoints    60 from 121 lines" in capsys.readouterr().out
    assert (out / "contours.geojson").stat().st_size > 500
    assert main([str(log), "--crs", "local", "--interval", "0.25", "--out", str(out), *keep]) == 2
    assert "projected CRS" in capsys.readouterr().err
    refused = [
        str(log),
        "--crs",
        "EPSG:25832",
        "--interval",
        "1",
        "--out",
        str(out),
        "--source-crs",
        "EPSG:25832",
        *keep,
    ]
    assert main(refused) == 2
    assert "geographic CRS" in capsys.readouterr().err


def test_the_main_job_takes_degrees_in_a_table(tmp_path, capsys):
    """Degrees, minutes and seconds in German columns, with a decimal comma."""
    rows = ["Punkt;Breite;Länge;Höhe"]
    for i in range(36):
        second = f"{2 + i % 6 * 0.05:.4f}".replace(".", ",")
        rows.append(f"P{i};48°07'{second}\"N;11°31'{i // 6 * 0.07:07.4f}\"O;{545 + i / 30:.3f}".replace(".", ","))
    path = tmp_path / "punkte.csv"
    path.write_text("\n".join(rows) + "\n", encoding="utf-8")
    assert main([str(path), "--crs", "EPSG:25832", "--interval", "0.25", "--out", str(tmp_path / "out")]) == 0
    assert "\nPoints    36 from 37 lines" in capsys.readouterr().out
