"""Several files of one site as one survey."""

import csv

import numpy as np
import pytest
from pyproj import CRS

from plugin.core.messages import SurveyError
from plugin.core.points.delimited import read_points
from plugin.core.points.geographic import HeightKind
from plugin.core.points.merge import merge_files
from plugin.core.points.nmea import read_nmea
from plugin.core.points.table import write_points, write_rejects
from plugin.core.units import LengthUnit

HEADER = "name,easting,northing,height,code"


@pytest.fixture
def survey(tmp_path):
    def read(name, *rows, header=HEADER, crs=None):
        path = tmp_path / name
        path.parent.mkdir(exist_ok=True)
        path.write_text("\n".join([header, *rows]) + "\n", encoding="utf-8")
        return read_points(path, crs=crs, unit=LengthUnit.METRE)

    return read


def test_all_points_and_lines_are_kept_with_their_file(survey, tmp_path):
    monday = survey("monday.csv", "P1,100.5,200.5,10.5,KB", "P2,101.5,200.5,10.6,", "P3,oops,1,1,", "# note")
    tuesday = survey(
        "tuesday.csv", "P2,110.5,220.5,11.5,GR,5", "Q1,100.51,200.5,10.75,KB,6", "", header=HEADER + ",battery"
    )
    merged = merge_files([monday, tuesday])
    points = merged.points
    assert points.name.tolist() == ["P1", "P2", "P2", "Q1"]
    assert points.extra["source"].tolist() == ["monday.csv"] * 2 + ["tuesday.csv"] * 2
    assert points.source_line.tolist() == [2, 3, 2, 3]
    assert points.extra["battery"].tolist() == ["", "", "5", "6"]
    assert merged.sources == ("monday.csv", "tuesday.csv")
    account = merged.account
    assert (account.lines, account.points, account.rejects) == (9, 4, 1)
    assert (account.comments, account.blanks, account.header) == (1, 1, 2)
    assert merged.rejects.source.tolist() == ["monday.csv"]
    write_rejects(merged.rejects, tmp_path / "rejects.csv")
    with open(tmp_path / "rejects.csv", encoding="utf-8", newline="") as stream:
        (row,) = csv.DictReader(stream)
    assert (row["line"], row["source"], row["text"]) == ("4", "monday.csv", "P3,oops,1,1,")
    write_points(points, tmp_path / "all.csv")
    again = read_points(tmp_path / "all.csv", unit=LengthUnit.METRE).points
    assert again.extra["source"].tolist() == points.extra["source"].tolist()


def test_clashes_of_names_and_heights_are_reported(survey):
    first = survey("a.csv", "P1,100.5,200.5,10.5,", "P2,101.5,200.5,10.6,", "P4,103,200,10,", ",1,1,1,")
    second = survey("b.csv", "P2,110.5,220.5,11.5,", "Q1,100.51,200.5,10.75,", "Q2,101.5,200.5,10.61,", ",5,5,5,")
    third = survey("c.csv", "P2,7,7,7,", "R1,100.5,200.515,10.2,")
    merged = merge_files([first, second, third])
    (clash,) = merged.clashes
    assert (clash.name, clash.points.tolist()) == ("P2", [1, 4, 8])
    found = merged.height_differences
    pairs = {(int(i), int(j)): round(float(rise), 6) for i, j, rise in zip(found.first, found.second, found.rise)}
    assert pairs == {(0, 5): 0.25, (0, 9): -0.3, (5, 9): -0.55}
    assert found.distance.max() <= 0.02
    codes = [note.text.code for note in merged.messages]
    assert codes.count("merge.heights_differ") == 3
    assert codes.count("merge.name_clashes") == 1
    assert not merge_files([first, second], same_height=0.3).height_differences.first.size
    assert len(merge_files([first]).points) == 4


def test_differences_are_those_of_a_plain_search(survey):
    """Against all pairs: for each point of the later file the nearest of the earlier within reach."""
    rng = np.random.default_rng(5)
    tables = [np.column_stack([rng.uniform(0, 0.5, (300, 2)), rng.normal(10, 0.04, 300)]).round(4) for _ in range(2)]
    files = [
        survey(f"{i}.csv", *(f"P{i},{e},{n},{h}," for e, n, h in table)) for i, table in enumerate(tables)
    ]  # fmt: skip
    found = merge_files(files, same_place=0.01, same_height=0.05).height_differences
    expected = set()
    for j, (e, n, h) in enumerate(tables[1]):
        away = np.hypot(tables[0][:, 0] - e, tables[0][:, 1] - n)
        i = int(np.argmin(away))
        if away[i] <= 0.01 and abs(h - tables[0][i, 2]) > 0.05:
            expected.add((i, 300 + j))
    assert len(expected) > 3
    assert set(zip(found.first.tolist(), found.second.tolist())) == expected


def test_files_of_the_same_name_are_told_apart_by_their_path(survey):
    merged = merge_files([survey("one/s.csv", "P1,1,1,1,"), survey("two/s.csv", "P1,2,2,2,")])
    assert len(set(merged.points.extra["source"])) == 2


def test_what_cannot_be_merged(survey, tmp_path):
    plain = survey("a.csv", "P1,500000.5,5712395.5,10.5,")
    utm = survey("b.csv", "P1,500000.5,5712395.5,10.5,", crs=CRS.from_epsg(25832))
    for files, code in (([], "nothing"), ([plain, utm], "other_crs"), ([plain, plain], "twice")):
        with pytest.raises(SurveyError) as caught:
            merge_files(files)
        assert caught.value.code == "merge." + code
    log = tmp_path / "log.nmea"
    log.write_text("$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47\n", encoding="ascii")
    other = tmp_path / "other.nmea"
    other.write_bytes(log.read_bytes())
    sent = read_nmea(log, pole_height=0.0)
    summed = read_nmea(other, heights=HeightKind.ELLIPSOIDAL, pole_height=0.0)
    with pytest.raises(SurveyError) as caught:
        merge_files([plain, sent])
    assert caught.value.code == "merge.other_positions"
    with pytest.raises(SurveyError) as caught:
        merge_files([sent, summed])
    assert caught.value.code == "merge.other_heights"
    both = merge_files([sent, read_nmea(other, pole_height=0.0)])
    assert both.geographic.latitude.tolist() == [sent.geographic.latitude[0]] * 2
    assert both.account.lines == 2
