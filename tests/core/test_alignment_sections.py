"""Profiles and cross-sections, against the TIN's own heights and shapely; and the part of a TIN near lines."""

import numpy as np
import pytest
import shapely

from plugin.core.alignment.line import make_alignment
from plugin.core.alignment.profile import make_profile
from plugin.core.alignment.sections import cut_sections, section_distances
from plugin.core.messages import SurveyError
from plugin.core.surface import corridor as module
from plugin.core.surface.along import lay_lines
from plugin.core.surface.corridor import corridor
from plugin.core.surface.locate import heights_at
from tests.core.surfaces import ORIGIN, random_tin, ring

LINE = ORIGIN + np.array([[5.0, 12.0], [50.0, 15.0], [88.0, 45.0], [90.0, 95.0]])


def test_profile_equals_the_tin_and_has_a_vertex_at_every_edge():
    tin = random_tin(600, 1)
    line = make_alignment(LINE, "Lane")
    found = make_profile(line, [("ground", tin)]).surfaces[0]
    assert found.gaps.shape == (0, 2)
    rng = np.random.default_rng(0)
    distance = rng.uniform(0, line.length, 2000)
    np.testing.assert_allclose(found.heights(distance), heights_at(tin, line.places(distance)), atol=1e-9)
    edges = shapely.union_all(shapely.boundary(shapely.polygons(tin.vertices[tin.triangles][:, :, :2] + ORIGIN)))
    crossed = shapely.get_coordinates(shapely.intersection(edges, shapely.linestrings(line.xy)))
    at = np.sort(line.locate(crossed)[0])
    assert len(at) > 50
    assert np.max(np.min(np.abs(at[:, None] - found.distance), axis=1)) < 1e-6


def test_profile_of_a_parallel_and_of_two_surfaces():
    one, two = random_tin(600, 1), random_tin(400, 2)
    line = make_alignment(LINE, "Lane")
    found = make_profile(line, [("one", one), ("two", two)], offset=3.0)
    assert [s.surface for s in found.surfaces] == ["one", "two"]
    distance = line.at[1:-1]
    half = np.sum(line.directions(distance) * line.directions(distance - 1), axis=1)
    places = line.places(distance, 3.0 / half)
    for own, tin in zip(found.surfaces, (one, two)):
        np.testing.assert_allclose(own.heights(distance), heights_at(tin, places), atol=1e-6)


def test_gaps_of_the_surface_are_told():
    tin = random_tin(900, 3, keep=ring)
    line = make_alignment(ORIGIN + np.array([[10.0, 50.0], [90.0, 50.0]]), "Lane", start=1000.0)
    profile = make_profile(line, [("ground", tin)])
    gap = profile.surfaces[0].gaps
    assert len(gap) == 1
    assert gap[0] == pytest.approx([22, 58], abs=6)
    assert np.isnan(profile.surfaces[0].heights([40.0])[0])
    assert np.isfinite(profile.surfaces[0].heights([10.0, 75.0])).all()
    assert "centreline Lane are outside the surface ground (stretches: 1, the first from station 1+0" in str(
        profile.messages[0]
    )


def test_a_line_off_the_surface_is_refused():
    line = make_alignment(LINE + 5000, "Lane")
    with pytest.raises(SurveyError, match=r"Lane is nowhere on the surface ground .* in one CRS"):
        make_profile(line, [("ground", random_tin(100, 1))])
    with pytest.raises(SurveyError, match="None of the 3 cross-sections is on the surface ground"):
        cut_sections(line, np.array([0.0, 10.0, 20.0]), 5.0, 5.0, [("ground", random_tin(100, 1))])


def test_sections_equal_the_tin():
    one, two = random_tin(900, 3, keep=ring), random_tin(500, 4)
    line = make_alignment(LINE, "Lane")
    distance = section_distances(line, 2.5, vertices=True)
    made = cut_sections(line, distance, 6.0, 9.0, [("one", one), ("two", two)])
    assert len(made) == len(distance)
    assert np.count_nonzero(np.isin(line.at, distance)) == 4
    for cut, tin in zip(made.cuts, (one, two)):
        assert np.all(np.diff(cut.section) >= 0)
        section = np.repeat(cut.section, np.diff(cut.start))
        assert np.all((cut.offset >= -6 - 1e-9) & (cut.offset <= 9 + 1e-9))
        np.testing.assert_allclose(cut.height, heights_at(tin, line.places(distance[section], cut.offset)), atol=1e-9)
        for i in range(len(made)):
            for offset, height in cut.parts(i):
                middle, between = (offset[1:] + offset[:-1]) / 2, (height[1:] + height[:-1]) / 2
                place = line.places(np.full(len(middle), distance[i]), middle)
                np.testing.assert_allclose(between, heights_at(tin, place), atol=1e-9)
    widths = [offset[-1] - offset[0] for i in range(len(made)) for offset, _ in made.cuts[1].parts(i)]
    assert max(widths) == pytest.approx(15)


def test_stations_of_sections():
    line = make_alignment([[0, 0], [45.5, 0]], "A", start=1003.0, equations=[(1020.0, 2000.0)])
    # numbers 1003..1020, then 2000..2028.5
    np.testing.assert_allclose(
        section_distances(line, 10.0, stations=[1012.5]), [0, 7, 9.5, 17, 27, 37, 45.5], atol=1e-9
    )
    np.testing.assert_allclose(section_distances(line, 0, stations=[2001.0], ends=False), [18])
    with pytest.raises(SurveyError, match="interval of cross-sections is -1 m"):
        section_distances(line, -1.0)
    with pytest.raises(SurveyError, match=r"no station 1\+500"):
        section_distances(line, 10.0, stations=[1500.0])
    with pytest.raises(SurveyError, match="reach -1 m to the left"):
        cut_sections(line, np.array([1.0]), -1.0, 2.0, [])


def test_sections_that_cross_in_a_tight_bend_are_told():
    """A quarter circle of radius 10 m to the left: sections reaching 12 m to the left all cross, those of 9 m don't."""
    angle = np.radians(np.arange(0, 91, 1.0))
    line = make_alignment(10 * np.column_stack([np.sin(angle), 1 - np.cos(angle)]), "Bend")
    distance = line.at[1:-1:8]
    narrow = cut_sections(line, distance, 9.0, 12.0, [])
    assert (narrow.crossings, narrow.messages) == ((), ())
    wide = cut_sections(line, distance, 12.0, 12.0, [])
    n = len(distance)
    assert [(c.first, c.second) for c in wide.crossings] == [(i, j) for i in range(n) for j in range(i + 1, n)]
    for crossing in wide.crossings:
        np.testing.assert_allclose(crossing.xy, [0, 10], atol=1e-3)
        assert crossing.first_offset == pytest.approx(-10, abs=1e-3)
        assert crossing.second_offset == pytest.approx(-10, abs=1e-3)
    assert "10.00 m to the left" in str(wide.messages[0])
    assert f"{len(wide.crossings)} pairs" in str(wide.messages[0])


@pytest.mark.parametrize("seed", range(3))
def test_the_part_near_lines_answers_as_the_whole(seed, monkeypatch):
    monkeypatch.setattr(module, "_SMALL", 10)
    tin = random_tin(6000, seed, keep=ring)
    rng = np.random.default_rng(seed)
    start = rng.uniform(-10, 110, (3, 2))
    lines = [ORIGIN + np.stack([p, p + rng.uniform(-12, 12, 2)]) for p in start]
    vertex = tin.vertices[rng.integers(0, len(tin.vertices), 2), :2]
    lines += [ORIGIN + np.stack([p, p + np.array([7.0, 3.0])]) for p in vertex]  # through vertices
    near = corridor(tin, lines)
    kept, whole = len(near.triangles), len(tin.triangles)
    assert kept < 0.6 * whole
    whole, part = lay_lines(tin, lines), lay_lines(near, lines)
    np.testing.assert_array_equal(whole.line, part.line)
    np.testing.assert_allclose(whole.xyz, part.xyz, atol=1e-9)
    assert [(g.line, g.start, g.end) for g in whole.gaps] == [(g.line, g.start, g.end) for g in part.gaps]
