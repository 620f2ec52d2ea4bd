"""Positions between CRSs, heights, and where the numbers come from."""

import shutil
from pathlib import Path

import numpy as np
import pytest
from pyproj import CRS, network

from plugin.core.georeference.axes import flat, from_lonlat, has_heights, solid, to_lonlat
from plugin.core.georeference.heights import (
    ConstantSeparation,
    GridSeparation,
    ReceiverSeparation,
    ellipsoidal_heights,
    orthometric_heights,
    separation_at,
)
from plugin.core.georeference.operations import choose_operation, find_operations
from plugin.core.georeference.record import Step
from plugin.core.georeference.transform import transform_geographic, transform_points
from plugin.core.georeference.whereabouts import in_area
from plugin.core.messages import SurveyError, Text, message
from plugin.core.points.geographic import HeightKind
from plugin.core.points.pointset import make_points


def dms(degrees, minutes=0, seconds=0.0):
    return degrees + minutes / 60 + seconds / 3600


CLARKES_LINK = 0.201166195164

#: Worked examples of IOGP publication 373-7-2 (EPSG Guidance Note 7-2), values from memory; each agrees with
#: PROJ to the rounding of the note. Code, latitude, longitude, easting, northing in units of the CRS, unit in m.
WORKED_EXAMPLES = {
    "Mercator (variant A)": (3002, -3, 120, 5009726.58, 569150.82, 1),
    "Mercator (variant B)": (3388, 53, 53, 165704.29, 5171848.07, 1),
    "Lambert Conic Conformal (2SP)": (32040, 28.5, -96, 2963503.91, 254759.80, 1200 / 3937),
    "Lambert Conic Conformal (1SP)": (24200, dms(17, 55, 55.80), -dms(76, 56, 37.26), 255966.58, 142493.51, 1),
    "Transverse Mercator": (27700, 50.5, 0.5, 577274.98, 69740.49, 1),  # its JHS formula
    "Transverse Mercator (South Orientated)": (
        2053, -dms(25, 43, 55.302), dms(28, 16, 57.479), 71984.48, 2847342.74, 1,
    ),
    "Oblique Stereographic": (28992, 53, 6, 196105.283, 557057.739, 1),
    "Polar Stereographic (variant A)": (32661, 73, 44, 3320416.75, 632668.43, 1),
    "Polar Stereographic (variant B)": (3032, -75, 120, 7255380.79, 7053389.56, 1),
    "Hotine Oblique Mercator (variant B)": (
        29873, dms(5, 23, 14.1129), dms(115, 48, 19.8196), 679245.73, 596562.78, 1,
    ),
    "Cassini-Soldner": (30200, 10, -62, 66644.94, 82536.22, CLARKES_LINK),
    "Lambert Azimuthal Equal Area": (3035, 50, 5, 3962799.45, 2999718.85, 1),
}  # fmt: skip


@pytest.mark.parametrize("method", WORKED_EXAMPLES)
def test_projections_agree_with_the_worked_examples_of_epsg_guidance_note_7_2(method):
    code, lat, lon, easting, northing, unit = WORKED_EXAMPLES[method]
    crs = CRS.from_epsg(code)
    assert crs.coordinate_operation.method_name == method
    half_a_digit = 0.0055 * unit
    east, north = from_lonlat(crs, [lon], [lat])
    assert abs(east[0] - easting * unit) < half_a_digit
    assert abs(north[0] - northing * unit) < half_a_digit
    back_lon, back_lat = to_lonlat(crs, [easting * unit], [northing * unit])
    assert back_lon[0] == pytest.approx(lon, abs=3e-7)
    assert back_lat[0] == pytest.approx(lat, abs=3e-7)


@pytest.mark.parametrize("method", [m for m in WORKED_EXAMPLES if WORKED_EXAMPLES[m][5] == 1])
def test_geographic_positions_reach_the_crs_of_the_job(method):
    code, lat, lon, easting, northing, _ = WORKED_EXAMPLES[method]
    crs = CRS.from_epsg(code)
    done = transform_geographic([lon], [lat], [12.5], crs.geodetic_crs, crs)
    assert done.easting[0] == pytest.approx(easting, abs=0.0055)
    assert done.northing[0] == pytest.approx(northing, abs=0.0055)
    assert done.height[0] == 12.5
    assert done.record.details.accuracy_m == 0.0


def test_geocentric_example_of_the_note_bounds_the_ellipsoidal_height():
    """IOGP 373-7-2, geographic/geocentric conversions (from memory): WGS 84 53°48'33.82"N 2°07'46.38"E 73.0 m."""
    from pyproj import Transformer

    x, y, z = Transformer.from_crs(4979, 4978, always_xy=True).transform(dms(2, 7, 46.38), dms(53, 48, 33.82), 73.0)
    assert (round(x, 3), round(y, 3), round(z, 3)) == (3771793.968, 140253.342, 5124304.349)


def test_a_crs_in_us_survey_feet_gets_metres():
    """EPSG:2277; metres in the core are feet of the CRS times 1200/3937 (NIST SP 811)."""
    from pyproj import Transformer

    feet = Transformer.from_crs(4269, 2277, always_xy=True).transform(-97.7, 30.3)
    done = transform_geographic([-97.7], [30.3], [0.0], CRS(4269), CRS(2277))
    np.testing.assert_allclose([done.easting[0], done.northing[0]], np.array(feet) * 1200 / 3937, rtol=1e-15)


def test_points_in_feet_come_back_from_metres():
    feet = make_points([949465.406, 949565.406], [3070309.475, 3070409.475], [100.0, 110.0], crs=CRS(2277))
    metric = transform_points(feet, CRS(32139)).points  # the same zone in metres
    assert metric.crs == CRS(32139)
    np.testing.assert_allclose(np.diff(metric.easting), np.diff(feet.easting), atol=1e-8)
    np.testing.assert_allclose(metric.height, feet.height)
    back = transform_points(metric, CRS(2277)).points
    np.testing.assert_allclose(back.easting, feet.easting, atol=1e-6)
    np.testing.assert_allclose(back.northing, feet.northing, atol=1e-6)


@pytest.mark.parametrize(
    ("source", "target", "lon", "lat"),
    [(25832, 25833, 12.0, 51.0), (28355, 28356, 150.0, -35.0), (31983, 31982, -48.0, -20.0), (32601, 32660, 180, 60)],
)
def test_zones_of_both_hemispheres_go_there_and_back(source, target, lon, lat):
    east, north = from_lonlat(CRS(source), [lon, lon - 1e-4], [lat, lat + 1e-4])
    points = make_points(east, north, [3.0, np.nan], crs=CRS(source))
    there = transform_points(points, CRS(target))
    assert there.record.step is Step.TRANSFORMED
    assert there.record.details.accuracy_m == 0.0
    expected = from_lonlat(CRS(target), [lon, lon - 1e-4], [lat, lat + 1e-4])
    np.testing.assert_allclose(there.points.easting, expected[0], atol=1e-4)
    back = transform_points(there.points, CRS(source)).points
    np.testing.assert_allclose([back.easting, back.northing], [east, north], atol=1e-4)
    np.testing.assert_array_equal(back.height, points.height)
    assert points.crs == CRS(source)


def test_a_ballpark_operation_is_refused_until_accepted_by_name():
    crude = CRS("+proj=longlat +ellps=bessel +no_defs")
    with pytest.raises(SurveyError) as refused:
        transform_geographic([11.0], [48.0], [0.0], crude, CRS(25832))
    assert refused.value.code == "transform.ballpark"
    name = refused.value.values["name"]
    assert "allpark" in name
    done = transform_geographic([11.0], [48.0], [0.0], crude, CRS(25832), accept=[name.upper()])
    assert done.record.details.accuracy_m is None
    said = [str(one) for one in done.record.statements]
    assert "unknown" in said[0]
    assert done.record.statements[1].text.code == "transform.accepted"


def test_an_operation_whose_grid_is_missing_is_refused():
    """DHHN2016 needs a quasi-geoid grid that no PROJ package carries; without it PROJ leaves heights as they are."""
    compound = CRS("EPSG:25832+7837")
    args = ([11.0], [48.0], [500.0], CRS(4326), compound, HeightKind.ELLIPSOIDAL)
    ready, lacking = find_operations(CRS(4979), compound, (10.9, 47.9, 11.1, 48.1))
    if not any(one.missing_grids for one in lacking):
        pytest.skip("this PROJ has the grid")
    with pytest.raises(SurveyError) as refused:
        transform_geographic(*args)
    assert refused.value.code == "transform.ballpark_lacking"
    assert refused.value.values["grids"] == ", ".join(lacking[0].missing_grids)
    done = transform_geographic(*args, accept=[ready[0].name])
    assert done.height[0] == 500.0
    with pytest.raises(SurveyError) as refused:
        transform_geographic(*args, accept=[lacking[0].name])
    assert refused.value.code == "transform.not_acceptable"


def test_a_coarser_operation_is_not_taken_in_silence():
    """NAD83 to WGS 84 in Minnesota: 4 m without a grid, 2 m with one."""
    box = (-93.1, 45.0, -93.0, 45.1)
    ready, lacking = find_operations(CRS(4326), CRS(26915), box)
    if not any(one.missing_grids and one.covers(box) for one in lacking):
        pytest.skip("this PROJ has the grid")
    with pytest.raises(SurveyError) as refused:
        choose_operation(CRS(4326), CRS(26915), box)
    assert refused.value.code == "transform.missing_grid"
    assert refused.value.values["name"] == ready[0].name
    choice = choose_operation(CRS(4326), CRS(26915), box, accept=[ready[0].name])
    assert choice.accepted
    assert choice.operation.accuracy_m == 4.0


def test_a_missing_grid_elsewhere_does_not_matter():
    choice = choose_operation(CRS(4326), CRS(25832), (11.0, 48.0, 11.1, 48.1))
    assert not choice.accepted
    assert choice.operation.accuracy_m == 1.0
    assert "axis order" not in choice.operation.name


def test_the_network_stays_off_and_is_given_back_as_it_was():
    before = network.is_network_enabled()
    try:
        network.set_network_enabled(active=True)
        _, lacking = find_operations(CRS(4267), CRS(26915), (-93.1, 45.0, -93.0, 45.1))
        assert network.is_network_enabled()
    finally:
        network.set_network_enabled(active=before)
    offline = find_operations(CRS(4267), CRS(26915), (-93.1, 45.0, -93.0, 45.1))[1]
    assert [one.name for one in lacking] == [one.name for one in offline]


def test_mirrored_axes_are_refused_and_turned_ones_said():
    with pytest.raises(SurveyError) as refused:
        transform_geographic([16.8], [50.2], [0.0], CRS(4156), CRS(5513))
    assert refused.value.code == "axes.mirrored"
    done = transform_geographic([28.3], [-25.7], [0.0], CRS(4148), CRS(2053))
    assert done.record.statements[-1].text.code == "axes.turned"
    for code, lon, lat in ((32661, 44, 73), (3032, 120, -75), (32661, -100, 85), (31467, 9, 50)):
        done = transform_geographic([lon], [lat], [0.0], CRS(code).geodetic_crs, CRS(code))
        assert done.record.statements[-1].text.code == "transform.heights_kept"


def test_a_position_that_has_no_counterpart_names_its_line():
    with pytest.raises(SurveyError) as refused:
        transform_geographic(
            [11.0, np.nan], [48.0, 48.0], [0.0, 0.0], CRS(4258), CRS(25832), file="a.csv", lines=np.array([2, 3])
        )
    assert str(refused.value).startswith("a.csv line 3: this position cannot be transformed")


def test_points_on_a_local_grid_cannot_be_transformed():
    with pytest.raises(SurveyError) as refused:
        transform_points(make_points([0.0], [0.0], [0.0]), CRS(25832))
    assert refused.value.code == "transform.no_source_crs"


def test_two_and_three_axes():
    assert flat(CRS(4979)) == CRS(4326)
    assert solid(CRS(4326)) == CRS(4979)
    assert flat(CRS("EPSG:25832+7837")) == CRS(25832)
    assert has_heights(CRS("EPSG:25832+7837"))
    assert has_heights(CRS(4979))
    assert not has_heights(CRS(25832))


def test_gon_and_another_prime_meridian():
    """NTF (Paris) counts gon from Paris, 2°20'14.025" E of Greenwich (EPSG)."""
    lon, _ = to_lonlat(CRS(27572), [600000.0], [2200000.0])  # on the central meridian
    assert lon[0] == pytest.approx(2.33722917, abs=1e-7)


def test_areas_across_the_180th_meridian():
    fiji = (176.0, -20.0, -178.0, -12.0)
    lon = np.array([177.0, 179.99, -179.0, -178.5, -177.0, 175.0, np.nan])
    assert in_area(fiji, lon, np.full(7, -17.0)).tolist() == [True] * 4 + [False] * 3
    assert in_area((-180, -90, 180, 90), np.array([-180.0, 0.0, 180.0]), np.zeros(3)).all()


# Heights -------------------------------------------------------------------------------------------------------


def write_gtx(path, west, south, step, values):
    """A grid in the GTX layout: header of four doubles (south, west, steps) and two int32, rows from the south."""
    rows, columns = values.shape
    header = np.array([south, west, step, step], ">f8").tobytes() + np.array([rows, columns], ">i4").tobytes()
    Path(path).write_bytes(header + values.astype(">f4").tobytes())


@pytest.fixture
def plane_grid(tmp_path):
    """Separation 40 m + 0.5 m a degree eastward + 0.25 m northward from 10°E 47°N; bilinear is exact on it."""
    folder = tmp_path / "a folder's grid"
    folder.mkdir()
    lon, lat = np.meshgrid(10 + np.arange(5) * 0.5, 47 + np.arange(5) * 0.5)
    write_gtx(folder / "plane.gtx", 10, 47, 0.5, 40 + 0.5 * (lon - 10) + 0.25 * (lat - 47))
    return folder / "plane.gtx"


def site(lon, lat, height=500.0):
    east, north = from_lonlat(CRS(25832), lon, lat)
    n = len(east)
    return make_points(east, north, np.full(n, height), crs=CRS(25832), source="s.csv", source_line=np.arange(n) + 2)


def test_separation_is_interpolated_from_a_grid(plane_grid):
    points = site([11.1, 11.3], [48.2, 48.3])
    expected = 40 + 0.5 * np.array([1.1, 1.3]) + 0.25 * np.array([1.2, 1.3])
    done = orthometric_heights(points, GridSeparation(plane_grid))
    np.testing.assert_allclose(500 - done.points.height, expected, atol=2e-5)  # float32 in the grid
    assert done.record.details.mean_m == pytest.approx(expected.mean(), abs=2e-5)
    assert "plane.gtx" in str(done.record.statements[1])
    back = ellipsoidal_heights(done.points, GridSeparation(plane_grid)).points
    np.testing.assert_allclose(back.height, 500.0, atol=1e-9)
    assert points.height.tolist() == [500.0, 500.0]


def test_a_published_geoid_height():
    """EGM96 15' grid at 0°N 0°E: 17.16 m (NGA's grid file WW15MGH.GRD, from memory)."""
    grid = Path("/usr/share/proj/egm96_15.gtx")
    if not grid.exists():
        pytest.skip("PROJ's EGM96 grid is not installed here")
    assert separation_at(grid, [0.0], [0.0])[0] == pytest.approx(17.16, abs=0.005)


def test_points_off_the_grid_are_refused(plane_grid):
    with pytest.raises(SurveyError) as refused:
        orthometric_heights(site([11.0, 9.0], [48.0, 48.0]), GridSeparation(plane_grid))
    assert str(refused.value).startswith("s.csv line 3: this point lies outside the geoid grid plane.gtx")


def test_files_that_are_no_grid_are_refused(tmp_path, plane_grid):
    bad = tmp_path / "bad.gtx"
    bad.write_text("no grid " * 20)
    for path, code in ((bad, "heights.grid_unreadable"), (tmp_path / "none.gtx", "heights.grid_unreadable")):
        with pytest.raises(SurveyError) as refused:
            orthometric_heights(site([11.0], [48.0]), GridSeparation(path))
        assert refused.value.code == code
    comma = tmp_path / "a,b.gtx"
    shutil.copy(plane_grid, comma)
    with pytest.raises(SurveyError) as refused:
        separation_at(comma, [11.0], [48.0])
    assert refused.value.code == "heights.grid_name"


def test_constant_and_receiver_separations():
    points = site([11.0, 11.1], [48.0, 48.0])
    done = orthometric_heights(points, ConstantSeparation(46.9, "sheet 4"))
    assert done.points.height == pytest.approx([453.1, 453.1])
    assert "46.900 m" in str(done.record.statements[1])
    assert "sheet 4" in str(done.record.statements[1])
    done = ellipsoidal_heights(points, ReceiverSeparation(np.array([46.9, 47.1])))
    assert done.points.height == pytest.approx([546.9, 547.1])
    assert "46.900 to 47.100 m, mean 47.000" in str(done.record.statements[1])
    with pytest.raises(SurveyError):
        orthometric_heights(points, ConstantSeparation(np.nan))
    with pytest.raises(ValueError, match="3 separations for 2 points"):
        orthometric_heights(points, ReceiverSeparation(np.zeros(3)))


def test_messages_inside_messages_are_translated():
    outer = message(Text("t.outer", "cause: {cause}"), cause=message(Text("t.inner", "{n} feet"), n=3))
    words = {"cause: {cause}": "Ursache: {cause}", "{n} feet": "{n} Fuß"}
    assert outer.say(words.__getitem__) == "Ursache: 3 Fuß"
