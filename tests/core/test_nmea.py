"""Receiver logs: sentences verified, epochs paired, every line accounted for."""

import time
from datetime import datetime, timezone
from functools import partial, reduce

import numpy as np
import pytest

from plugin.core.messages import SurveyError
from plugin.core.points import nmea, survey
from plugin.core.points.geographic import HeightKind
from plugin.core.points.nmea import is_nmea

#: Heights of the antenna, as a log has them.
read_nmea = partial(nmea.read_nmea, heights_of="antenna")
read_survey = partial(survey.read_survey, heights_of="antenna")

#: Of public teaching material, with its checksum: 48°07.038' N, 11°31.000' E, 545.4 m, separation 46.9 m.
TAUGHT = "$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47"


def sentence(body):
    """With the checksum, worked out one character at a time."""
    return f"${body}*{reduce(lambda total, sign: total ^ ord(sign), body, 0):02X}"


def gga(clock, lat="4807.0380000", lon="01131.0000000", quality=4, height="545.400", talker="GN", separation="46.900"):
    return sentence(f"{talker}GGA,{clock},{lat},N,{lon},E,{quality},18,0.7,{height},M,{separation},M,1.0,0001")


def gst(clock, lat="0.006", lon="0.008", up="0.015"):
    return sentence(f"GNGST,{clock},0.01,0.01,0.008,45.0,{lat},{lon},{up}")


def rmc(clock, date="090425", status="A"):
    return sentence(f"GNRMC,{clock},{status},4807.038,N,01131.000,E,0.5,84.4,{date},,,R")


def zda(clock, day=9, month=4, year=2025):
    return sentence(f"GPZDA,{clock},{day:02d},{month:02d},{year},00,00")


@pytest.fixture
def log(tmp_path):
    def write(*lines):
        path = tmp_path / "log.nmea"
        path.write_text("\r\n".join(lines) + "\r\n", encoding="utf-8")
        return path

    return write


def seconds(*parts):
    return datetime(*parts, tzinfo=timezone.utc).timestamp()


def test_the_taught_sentence(log):
    read = read_nmea(log(TAUGHT))
    assert read.geographic.latitude[0] == pytest.approx(48 + 7.038 / 60, abs=1e-13)
    assert read.geographic.longitude[0] == pytest.approx(11 + 31 / 60, abs=1e-13)
    assert read.points.height[0] == 545.4
    assert read.geographic.heights is HeightKind.ORTHOMETRIC
    assert read.points.extra["geoid_separation"][0] == 46.9
    assert read.points.extra["satellites"][0] == 8
    assert read.points.fix[0] == 1
    assert read.points.time[0] == 12 * 3600 + 35 * 60 + 19
    assert "nmea.no_date" in [note.text.code for note in read.messages]
    summed = read_nmea(log(TAUGHT), heights=HeightKind.ELLIPSOIDAL)
    assert summed.points.height[0] == pytest.approx(592.3, abs=1e-12)
    assert summed.geographic.heights is HeightKind.ELLIPSOIDAL


def test_the_age_of_the_correction_is_read(log):
    """Field 13 of GGA, field 11 of GNS (NMEA 0183 as commonly described)."""
    assert "age" not in read_nmea(log(TAUGHT)).points.extra
    gga = sentence("GPGGA,123519,4807.038,N,01131.000,E,4,08,0.9,545.4,M,46.9,M,2.5,0120")
    gns = sentence("GNGNS,123520,4807.038,N,01131.000,E,RR,08,0.9,545.4,46.9,3.0,0120")
    assert read_nmea(log(gga, gns)).points.extra["age"].tolist() == [2.5, 3.0]


def test_the_sentence_maker_makes_the_taught_checksum():
    assert sentence(TAUGHT[1:-3]) == TAUGHT


@pytest.mark.parametrize("place", range(1, len(TAUGHT) - 3))
def test_any_changed_character_is_a_reject(log, place):
    damaged = TAUGHT[:place] + chr(ord(TAUGHT[place]) ^ 1) + TAUGHT[place + 1 :]
    read = read_nmea(log(damaged, gga("123520")))
    assert read.rejects.line.tolist() == [1]
    assert read.rejects.text.tolist() == [damaged]
    assert read.rejects.reason[0].text.code in ("reject.bad_checksum", "reject.no_checksum")
    assert read.account.lines == 2


def test_epochs_are_paired_by_time(log):
    lines = []
    for i in range(5):
        clock = f"07060{i}.20"
        lines += [rmc(clock), gga(clock, lat=f"4807.0{i}80000"), gst(clock, up=f"0.01{i}"), "$GPGSV,1,1,00*79"]
    lines.insert(1, gst("070700.00"))  # of no position
    read = read_nmea(log(*lines))
    points = read.points
    assert np.allclose(points.sigma_v, [0.010, 0.011, 0.012, 0.013, 0.014])
    assert np.allclose(points.sigma_h, 0.01)  # root of 0.006² + 0.008²
    assert points.time.tolist() == pytest.approx([seconds(2025, 4, 9, 7, 6, i) + 0.2 for i in range(5)], abs=1e-6)
    assert points.source_line.tolist() == [3, 7, 11, 15, 19]
    account = read.account
    assert (account.lines, account.points, account.rejects, account.other) == (21, 5, 0, 16)


def test_the_date_turns_over_at_midnight(log):
    """One date at the start: the days behind follow from the clock, backwards too for a sentence out of order."""
    lines = [
        zda("235958.00"),
        gga("235959.00"),
        gga("000000.00"),
        gga("235959.90"),
        gga("090000.00"),
        gga("180000.00"),
        gga("000001.00"),
    ]
    read = read_nmea(log(gga("235957.00"), *lines))
    assert read.points.time.tolist() == [
        seconds(2025, 4, 9, 23, 59, 57), seconds(2025, 4, 9, 23, 59, 59), seconds(2025, 4, 10),
        seconds(2025, 4, 9, 23, 59, 59) + 0.9, seconds(2025, 4, 10, 9), seconds(2025, 4, 10, 18),
        seconds(2025, 4, 11, 0, 0, 1),
    ]  # fmt: skip


def test_dates_of_rmc(log):
    read = read_nmea(
        log(rmc("120000", "311299"), gga("120000"), rmc("120001", "290224"), gga("120001"), rmc("1", "99", "V"))
    )
    assert read.points.time.tolist() == [seconds(1999, 12, 31, 12), seconds(2024, 2, 29, 12, 0, 1)]
    void = read_nmea(log(rmc("120000", "060180", "V"), gga("120000")))
    assert void.points.time.tolist() == [43200.0]


def test_gns_counts_where_there_is_no_gga(log):
    def gns(clock, mode, sep="46.9"):
        return sentence(f"GNGNS,{clock},4807.038,S,01131.000,W,{mode},17,0.8,545.4,{sep},,")

    read = read_nmea(
        log(gga("120000"), gns("120000", "RR"), gns("120001", "AF"), gns("120002", "NN"), gns("120003", "XQ"))
    )
    assert read.points.fix.tolist() == [4, 5, 0]
    assert read.geographic.latitude[1] == pytest.approx(-48 - 7.038 / 60)
    assert read.geographic.longitude[1] == pytest.approx(-11 - 31 / 60)
    assert read.points.extra["geoid_separation"][1] == 46.9
    assert read.account.other == 1
    assert read.rejects.line.tolist() == [5]


@pytest.mark.parametrize(("line", "code"), [
    (sentence("GNGGA,120000,,,,,0,00,99.9,,M,,M,,"), "reject.no_position"),
    (sentence("GNGGA,120000,4807.0,N,01131.0,E,1,08,0.9,,M,,M,,"), "reject.no_height"),
    (sentence("GNGGA,120000,4867.0,N,01131.0,E,1,08,0.9,5.0,M,,M,,"), "reject.bad_field"),
    (sentence("GNGGA,120000,9107.0,N,01131.0,E,1,08,0.9,5.0,M,,M,,"), "reject.bad_field"),
    (sentence("GNGGA,120000,4807.0,X,01131.0,E,1,08,0.9,5.0,M,,M,,"), "reject.bad_field"),
    (sentence("GNGGA,126000,4807.0,N,01131.0,E,1,08,0.9,5.0,M,,M,,"), "reject.bad_field"),
    (sentence("GNGGA,120000,4807.0,N,01131.0,E,1,08,0.9,5.0,F,,M,,"), "reject.bad_field"),
    (sentence("GNGGA,120000,4807.0,N,01131.0,E,9,08,0.9,5.0,M,,M,,"), "reject.bad_field"),
    (sentence("GNGST,120000,,,,,a,0.1,0.1"), "reject.bad_field"), (zda("120000", 31, 2), "reject.bad_field"),
    (TAUGHT[:-3], "reject.no_checksum"), ("rubbish", "reject.not_a_sentence"),
    ("12:00 " + TAUGHT, "reject.not_a_sentence"),
    (TAUGHT[:-1] + "G", "reject.bad_checksum"), (TAUGHT + "x", "reject.bad_checksum"),
    (TAUGHT[:40], "reject.no_checksum"), (TAUGHT[:-1] + "°", "reject.bad_checksum"),
])  # fmt: skip
def test_lines_that_are_rejects(log, line, code):
    read = read_nmea(log("# a note", "", gga("115959"), line, "  " + gga("120001")))
    assert read.points.source_line.tolist() == [3, 5]
    assert read.rejects.line.tolist() == [4]
    assert read.rejects.text.tolist() == [line]
    assert read.rejects.reason[0].text.code == code
    assert str(read.rejects.reason[0])
    assert (read.account.comments, read.account.blanks, read.account.other) == (1, 1, 0)


def test_a_second_talker_of_the_same_epoch_is_a_reject(log):
    read = read_nmea(log(gga("120000"), gga("120000", talker="GP"), gga("120001")))
    assert read.points.source_line.tolist() == [1, 3]
    assert str(read.rejects.reason[0]) == "the same epoch as line 1, which is used"


def test_ellipsoidal_heights_need_the_separation(log):
    path = log(gga("120000"), gga("120001", separation=""))
    read = read_nmea(path, heights=HeightKind.ELLIPSOIDAL)
    assert read.points.height.tolist() == [pytest.approx(592.3)]
    assert read.rejects.reason[0].text.code == "reject.no_separation"
    assert read_nmea(path).account.points == 2


@pytest.mark.parametrize(("lines", "code"), [
    (["rubbish", "more"], "nmea.no_sentences"), ([rmc("120000")], "nmea.no_positions"),
    ([sentence("GNGGA,120000,,,,,0,00,99.9,,M,,M,,")], "nmea.no_positions"),
])  # fmt: skip
def test_logs_without_positions(log, lines, code):
    with pytest.raises(SurveyError) as caught:
        read_nmea(log(*lines))
    assert caught.value.code == code
    assert "log.nmea" in str(caught.value)


def test_other_sentences_and_makers_own_are_other(log):
    read = read_nmea(
        log(gga("120000"), sentence("PABC,GGA,1"), sentence("GPGSA,A,3"), "!AIVDM,1,1,,A,x,0*5C".replace("5C", ""))
    )
    assert (read.account.other, read.account.rejects) == (2, 1)


def test_a_log_is_told_from_a_table(tmp_path, log):
    path = log("# x", TAUGHT, gst("120000"))
    assert is_nmea(path)
    assert read_survey(path, geographic=True).account.points == 1
    with pytest.raises(SurveyError) as caught:
        read_survey(path)
    assert caught.value.code == "nmea.geographic"
    table = tmp_path / "t.csv"
    table.write_text("name,easting,northing,height\nP1,1.5,2.5,3.5\n", encoding="utf-8")
    assert not is_nmea(table)
    assert read_survey(table).points.easting.tolist() == [1.5]
    assert not is_nmea(tmp_path / "missing")


def test_a_long_log_is_read_fast(log):
    """200,000 sentences; the bound is wide, for slow machines."""
    lines = []
    for i in range(50_000):
        clock = f"{6 + i // 36000:02d}{i // 600 % 60:02d}{i % 600 / 10:05.2f}"
        lines += [rmc(clock), gga(clock, lat=f"4807.{i:07d}"), gst(clock), "$GPGSV,1,1,00*79"]
    path = log(*lines)
    begin = time.process_time()
    read = read_nmea(path)
    assert time.process_time() - begin < 5.0
    assert len(read.points) == 50_000
    assert np.array_equal(read.points.source_line, 2 + 4 * np.arange(50_000))
    assert np.allclose(np.diff(read.points.time), 0.1)
    assert np.isfinite(read.points.sigma_v).all()
