"""The gate: strays are put aside and named, in any place of the file; what may be part of the site stays."""

import time
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from pyproj import CRS
from walks import CLEAN, EAST, NORTH, survey, times, to_and_fro

from plugin.core.contours.lines import ContourOptions
from plugin.core.gate.gate import pass_gate
from plugin.core.georeference.intake import take_in
from plugin.core.georeference.intake_options import IntakeOptions
from plugin.core.job.run import compute
from plugin.core.job.settings import JobSettings
from plugin.core.points.decisions import words_of_reasons
from plugin.core.points.geographic import GeographicPoints
from plugin.core.points.pointset import SOURCE, Reason, Status, make_points
from plugin.core.quality.check import check_survey
from plugin.core.quality.coverage import coverage
from plugin.core.quality.overrides import with_overrides
from plugin.core.quality.repeats import find_stops
from plugin.core.quality.rounds import before_checks
from plugin.core.report.html import report_html
from plugin.core.report.labels import Words
from plugin.core.report.summary import summary
from plugin.core.surface.build import build_surface
from plugin.core.surface.locate import locate

FOOT = 0.3048
UTM32 = CRS.from_epsg(25832)


def swapped(east, north, height, which):
    east[which], north[which] = north[which], east[which].copy()


def zeros(east, north, height, which):
    east[which] = north[which] = height[which] = 0.0


def shifted(d_east, d_north):
    def shift(east, north, height, which):
        east[which] += d_east
        north[which] += d_north

    return shift


def with_height(east, north, height, which):
    east[which], height[which] = height[which], east[which].copy()


def negative(east, north, height, which):
    north[which] *= -1


def tenth(east, north, height, which):
    north[which] /= 10


def in_feet(east, north, height, which):
    east[which] /= FOOT
    north[which] /= FOOT


def nothing(east, north, height, which):
    north[which] = np.nan


def endless(east, north, height, which):
    height[which] = np.inf


#: What goes wrong, the reason that must be given, words of the likely cause.
WRONG = {
    "swapped": (swapped, Reason.SWAPPED, "Easting and northing swapped"),
    "zeros": (zeros, Reason.ZERO, "Coordinates of zero"),
    "with height": (with_height, Reason.SWAPPED, "The height swapped"),
    "sign": (negative, Reason.STRAY, "A sign"),
    "tenth": (tenth, Reason.STRAY, "A decimal point or digit"),
    "feet": (in_feet, Reason.STRAY, "Another unit"),
    "digit": (shifted(0.0, 3000.0), Reason.STRAY, "One wrong digit"),
    "1000 ft": (shifted(1000 * FOOT, 0.0), Reason.STRAY, ""),
    "10000 ft": (shifted(0.0, -10000 * FOOT), Reason.STRAY, ""),
    "30 km": (shifted(21000.0, 22222.0), Reason.STRAY, ""),
    "1000 km": (shifted(654321.0, -765432.0), Reason.STRAY, ""),
    "no place": (nothing, Reason.NO_PLACE, "no finite place"),
    "endless": (endless, Reason.NO_PLACE, "no finite place"),
}


def spoiled(how, which, timed=False, **more):
    columns = [column.copy() for column in to_and_fro(**more)]
    WRONG[how][0](*columns, np.asarray(which))
    return survey(*columns, time=times(len(columns[0])) if timed else None)


@pytest.mark.parametrize("timed", [False, True], ids=["no time", "time"])
@pytest.mark.parametrize("how", WRONG)
def test_strays_are_put_aside_with_lines_and_cause(how, timed):
    _, reason, cause = WRONG[how]
    which = [37, 400, 401, 902]
    done = pass_gate(spoiled(how, which, timed))
    assert np.flatnonzero(done.points.status == Status.REJECTED).tolist() == which
    assert not np.any(done.points.status == Status.FLAGGED)
    assert all(done.points.reasons[which] == int(reason))
    said = " ".join(str(one) for one in done.messages)
    assert cause in said
    assert "39, 402, 403, 904" in said


@pytest.mark.parametrize("how", WRONG)
@pytest.mark.parametrize("at", [0, -1], ids=["first", "last"])
def test_a_stray_at_an_end_of_the_file_is_found(how, at):
    """Without a cause or times nothing tells it from a base: it is named, kept, and no ground is drawn to it."""
    points = spoiled(how, [at])
    done = pass_gate(points)
    found = np.flatnonzero(done.points.status != Status.USED)
    assert found.tolist() == [at % len(points)]
    assert done.points.off_site[found].all()
    assert str(points.source_line[at]) in str(done.messages[0])
    timed = pass_gate(replace(points, time=times(len(points)))).points
    assert timed.status[at] == Status.REJECTED


@settings(deadline=None, max_examples=150, derandomize=True)
@given(
    st.sampled_from(sorted(WRONG)), st.booleans(),
    st.lists(st.integers(3, 780), min_size=1, max_size=5, unique=True),
)  # fmt: skip
def test_one_to_five_strays_anywhere_are_found_and_nothing_else(how, timed, which):
    done = pass_gate(spoiled(how, sorted(which), timed)).points
    assert np.flatnonzero(done.status != Status.USED).tolist() == sorted(which)
    assert all(done.status[which] == Status.REJECTED)


@settings(deadline=None, max_examples=100, derandomize=True)
@given(st.floats(2.0, 6.0), st.floats(0.0, 6.283), st.integers(3, 780), st.booleans())
def test_a_stray_100_m_to_1000_km_off_is_found(power, angle, which, timed):
    away = 1.2 * 10**power
    columns = to_and_fro()
    columns[0][which] += 36 * np.sign(np.cos(angle)) + away * np.cos(angle)
    columns[1][which] += 36 * np.sign(np.sin(angle)) + away * np.sin(angle)
    done = pass_gate(survey(*columns, time=times(len(columns[0])) if timed else None)).points
    assert np.flatnonzero(done.status == Status.REJECTED).tolist() == [which]


@pytest.mark.parametrize("seed", range(6))
@pytest.mark.parametrize("make", CLEAN, ids=lambda make: make.__name__)
def test_no_good_point_is_put_aside(make, seed):
    done = pass_gate(make(np.random.default_rng(seed)))
    assert not np.any(done.points.status == Status.REJECTED), [str(one) for one in done.messages]
    flagged = done.points.status == Status.FLAGGED
    assert all(done.points.reasons[flagged] == int(Reason.FAR_OFF))
    assert np.count_nonzero(flagged) <= 5


@pytest.mark.parametrize("seed", range(4))
@pytest.mark.parametrize("make", CLEAN, ids=lambda make: make.__name__)
def test_swapped_and_zero_lines_are_found_in_surveys_of_every_kind(make, seed):
    random = np.random.default_rng(seed)
    clean = make(random)
    which = np.unique(random.choice(len(clean), min(4, max(1, len(clean) // 4)), replace=False))
    for how in (zeros, swapped):
        columns = [each.copy() for each in (clean.easting, clean.northing, clean.height)]
        how(*columns, which)
        if np.hypot(columns[0] - clean.easting, columns[1] - clean.northing)[which].min() < 5000:
            continue  # on a small local grid a swapped point may lie among the others
        if len(clean) < 3:
            continue  # which of two points is the stray nothing tells
        done = pass_gate(replace(clean, easting=columns[0], northing=columns[1], height=columns[2])).points
        assert np.flatnonzero(done.status == Status.REJECTED).tolist() == which.tolist()


def test_a_block_of_swapped_lines_is_told_from_a_second_street():
    block = np.arange(100, 160)
    done = pass_gate(spoiled("swapped", block))
    assert np.flatnonzero(done.points.status == Status.REJECTED).tolist() == block.tolist()
    assert "swapped in 60 lines" in str(done.messages[0])


@pytest.mark.parametrize("order", [(2, 1, 0), (0, 2, 1), (1, 2, 0), (2, 0, 1)])
def test_a_block_of_lines_with_the_height_exchanged_is_put_aside(order):
    clean, block = to_and_fro(), np.arange(100, 160)
    columns = [column.copy() for column in clean]
    for column, other in zip(columns, order):
        column[block] = clean[other][block]
    done = pass_gate(survey(*columns))
    assert np.flatnonzero(done.points.status == Status.REJECTED).tolist() == block.tolist()
    assert "height swapped with a coordinate in 60 lines" in str(done.messages[0])


def test_heights_that_no_site_has_are_put_aside():
    for value, words in ((-9999.0, "height 10 km beyond"), (0.0, "A height of zero in line 502")):
        columns = to_and_fro()
        columns[2][500] = value
        done = pass_gate(survey(*columns))
        assert np.flatnonzero(done.points.status == Status.REJECTED).tolist() == [500]
        assert words in str(done.messages[0])


def test_many_heights_that_no_ground_has_are_put_aside_too():
    columns = to_and_fro()
    which = np.arange(5, len(columns[2]), 8)
    columns[2][which] *= 1000.0  # the decimal point was lost
    done = pass_gate(survey(*columns))
    assert np.flatnonzero(done.points.status == Status.REJECTED).tolist() == which.tolist()


def test_the_user_has_the_last_word():
    points = spoiled("1000 ft", [400])
    hand = points.reasons.copy()
    hand[400] = Reason.BY_HAND
    assert pass_gate(points.with_status(points.status, hand)).messages == ()


def test_files_of_one_set_are_looked_at_by_themselves():
    one, other = to_and_fro(seed=1), to_and_fro(5, seed=2)
    columns = [np.append(a, b) for a, b in zip(one, (other[0] + 60000.0, other[1], other[2]))]
    columns[0][[50, 900]] += 1000 * FOOT
    source = np.array(["a.csv"] * len(one[0]) + ["b.csv"] * len(other[0]), object)
    points = replace(survey(*columns), extra={SOURCE: source})
    done = pass_gate(points).points
    assert np.flatnonzero(done.status == Status.REJECTED).tolist() == [50, 900]


# Latitudes and longitudes


@pytest.mark.parametrize("lon", [9.0, -0.0003, 179.9998, -120.0])
@pytest.mark.parametrize("how", ["clean", "swapped", "zero", "off"])
def test_degrees_are_looked_at_as_they_are(lon, how):
    east, north, height = to_and_fro()
    metres = 111_000.0
    lat = -37.0 + (north - NORTH) / metres
    lon = (lon + (east - EAST) / metres / np.cos(np.radians(37.0)) + 180) % 360 - 180
    which = [] if how == "clean" else [5, 300, 301]
    if how == "swapped":
        lat[which], lon[which] = lon[which], lat[which].copy()
    elif how == "zero":
        lat[which] = lon[which] = 0.0
    elif how == "off":
        lat[which] += 1000 * FOOT / metres
    nowhere = np.full(len(lat), np.nan)
    done = pass_gate(survey(nowhere, nowhere, height), GeographicPoints(lon, lat, height)).points
    assert np.flatnonzero(done.status != Status.USED).tolist() == which


# The way in


def write(path, columns, name=None):
    rows = [
        f"{i + 1 if name is None else name[i]},{e:.3f},{n:.3f},{h:.3f}" for i, (e, n, h) in enumerate(zip(*columns))
    ]
    path.write_text("\n".join(["name,easting,northing,height", *rows]) + "\n", encoding="utf-8")
    return path


def test_a_swapped_line_says_nothing_of_where_the_file_lies(tmp_path):
    columns = to_and_fro()
    swapped(*columns, [400])
    came = take_in([write(tmp_path / "a.csv", columns)], IntakeOptions(crs=UTM32))
    assert came.messages == ()
    assert not came.areas[0].outside.any()
    assert came.areas[0].suggestions == ()
    assert "swapped in line 402" in str(came.aside[0])
    account = came.survey.account
    assert account.points == len(came.survey.points) == len(columns[0])
    assert account.lines == account.points + 1
    assert came.survey.points.easting[400] > 5e6  # as recorded


def test_strays_take_no_part_in_a_transformation(tmp_path):
    columns = [column.copy() for column in to_and_fro()]
    clean = take_in([write(tmp_path / "a.csv", columns)], IntakeOptions(crs=CRS.from_epsg(25833), source_crs=UTM32))
    columns[0][7] += 3000
    zeros(*columns, [400])
    done = take_in([write(tmp_path / "a.csv", columns)], IntakeOptions(crs=CRS.from_epsg(25833), source_crs=UTM32))
    assert [str(one) for one in done.statements] == [str(one) for one in clean.statements]
    points, whole = done.survey.points, clean.survey.points
    # The line of zeros may be no point at all.
    there = np.searchsorted(whole.source_line, points.source_line)
    assert points.source_line.tolist() == whole.source_line[there].tolist()
    same = ~np.isin(there, [7, 400])
    assert same.sum() == len(whole) - 2
    assert points.easting[same] == pytest.approx(whole.easting[there][same], abs=1e-6)
    assert points.easting[7] == pytest.approx(whole.easting[7] + 3000, abs=200)  # can be taken back


def test_files_are_named_where_there_are_several(tmp_path):
    one, other = to_and_fro(seed=1), to_and_fro(seed=2)
    swapped(*one, [400])
    paths = [write(tmp_path / "a.csv", one), write(tmp_path / "b.csv", other, [f"b{i}" for i in range(len(other[0]))])]
    came = take_in(paths, IntakeOptions(crs=UTM32))
    assert [str(said).count("a.csv") for said in came.aside] == [1]


def job(tmp_path, columns, decisions=None):
    path = write(tmp_path / "field.csv", columns)
    if decisions:
        (tmp_path / "decisions.csv").write_text("line,status,reason\n" + decisions, encoding="utf-8")
    return compute(
        JobSettings(
            path, tmp_path, ContourOptions(0.25), "EPSG:25832",
            decisions=tmp_path / "decisions.csv" if decisions else None,
        )
    )  # fmt: skip


def test_the_first_line_of_the_summary_and_of_the_report_tell_it(tmp_path):
    columns = to_and_fro()
    swapped(*columns, [400])
    result = job(tmp_path, columns)
    lines = summary(result, tmp_path)
    assert lines[0].startswith("Site      ")
    assert lines[1].startswith("Easting and northing swapped in line 402")
    html = report_html(result, Words())
    assert html.index("swapped in line 402") < html.index("<nav")
    assert result.check is not None
    assert "swapped" in str(result.check.findings[0].message)
    assert result.points.status[400] == Status.REJECTED
    assert words_of_reasons(int(result.points.reasons[400])) == "swapped"


def test_a_decision_takes_a_point_back_and_later_stages_bear_it(tmp_path):
    columns = [column.copy() for column in to_and_fro()]
    columns[0][400] += 1000 * FOOT
    without = job(tmp_path, columns)
    assert without.surface.tin.plan_area < 60 * 33 * 1.1  # no bridge to it
    taken = job(tmp_path, columns, "402,used,\n")
    assert taken.points.status[400] == Status.USED
    assert taken.surface.tin.plan_area > 2 * without.surface.tin.plan_area
    assert taken.overrides is not None
    assert len(taken.overrides) == 1


def test_a_flagged_base_stays_out_of_the_surface_until_it_is_used(tmp_path):
    columns = [np.append(first, column) for first, column in zip((EAST + 2000, NORTH, 99.0), to_and_fro())]
    result = job(tmp_path, columns)
    assert result.points.status[0] == Status.FLAGGED
    assert result.surface.tin.plan_area < 60 * 33 * 1.1
    used = job(tmp_path, columns, "2,used,\n")
    assert used.surface.tin.plan_area > 2 * result.surface.tin.plan_area


def test_the_check_of_a_layer_keeps_what_the_gate_said_and_what_a_hand_took_back():
    points = pass_gate(spoiled("1000 ft", [400, 600])).points
    status = points.status.copy()
    status[600] = Status.USED  # somebody changed it in the layer
    fresh, decisions = before_checks(points.with_status(status, points.reasons))
    assert decisions.line.tolist() == [602]
    decided, report = with_overrides(check_survey(fresh).points, decisions)
    assert decided.status[400] == Status.REJECTED
    assert decided.reasons[400] == int(Reason.STRAY)
    assert decided.status[600] == Status.USED
    assert decided.reasons[600] == int(Reason.BY_HAND)
    assert len(report) == 1
    again, kept = before_checks(decided)
    assert kept.line.tolist() == [602]
    assert with_overrides(check_survey(again).points, kept)[0].status.tolist() == decided.status.tolist()


# Time and memory


def processor(work, *given):
    start = time.process_time()
    result = work(*given)
    return time.process_time() - start, result


def test_time_goes_with_points_and_not_with_extent(tmp_path):
    clean = to_and_fro(40, 80.0)
    base = min(processor(job, tmp_path, clean)[0] for _ in range(2))
    for how in ("swapped", "zeros", "1000 ft", "1000 km"):
        columns = [column.copy() for column in clean]
        WRONG[how][0](*columns, np.array([400, 2000, 2001]))
        took = min(processor(job, tmp_path, columns)[0] for _ in range(2))
        assert took < 1.3 * base + 0.3, how


def test_the_gate_is_linear():
    small, large = to_and_fro(50, 250.0), to_and_fro(400, 250.0)
    points = [survey(*columns, name=[""] * len(columns[0])) for columns in (small, large)]
    for one in points:
        one.easting[77] += 1e6
    took = [min(processor(pass_gate, one)[0] for _ in range(3)) for one in points]
    assert took[1] < 3 * len(large[0]) / len(small[0]) * took[0] + 0.05


def test_few_far_vertices_do_not_slow_down_finding_places():
    clean = survey(*to_and_fro(60, 100.0))
    far = replace(clean, easting=clean.easting.copy(), northing=clean.northing.copy())
    far.easting[3], far.northing[3] = EAST + 60000, NORTH + 70000
    place = np.column_stack([clean.easting, clean.northing]) + 0.1
    took = []
    for points in (clean, far):
        tin = build_surface(points).tin
        took.append(min(processor(locate, tin, place)[0] for _ in range(3)))
    assert took[1] < 3 * took[0] + 0.05


def test_coverage_does_not_fill_the_way_to_a_far_point():
    columns = [column.copy() for column in to_and_fro()]
    columns[0][3] += 90000
    columns[1][3] += 50000
    points = survey(*columns)
    took, found = processor(coverage, build_surface(points).tin, points)
    assert took < 20
    assert any("no places to walk are listed" in str(one) for one in found.messages)
    assert len(found.walk_again) < 20000


# Faults that strays used to show


def test_three_records_each_the_outlier_of_one_axis_have_a_mean():
    xyz = np.array([[0.1, 0.0, 0.0], [0.0, 0.1, 0.0], [0.0, 0.0, 0.1]])
    stops = find_stops(make_points(*(xyz.T + 100)), np.arange(3), 0.5)
    assert len(stops) == 1
    assert stops[0].mean == pytest.approx(100 + xyz.mean(axis=0))
    assert np.isfinite(stops[0].spread).all()


def test_a_stray_that_can_be_placed_is_placed_though_another_cannot(tmp_path):
    """Far from its zone the projection has no place for a point: the other one must still be there to be taken back."""
    columns = [column.copy() for column in to_and_fro()]
    columns[0][7] += 3000
    columns[0][400] += 9e7
    options = IntakeOptions(crs=CRS.from_epsg(3035), source_crs=UTM32)
    done = take_in([write(tmp_path / "a.csv", columns)], options).survey.points
    assert np.flatnonzero(~done.used).tolist() == [7, 400]
    assert np.isfinite(done.easting[7])
    assert not np.isfinite(done.easting[400])
    assert done.source_line[400] == 402
