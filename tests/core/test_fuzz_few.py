"""A few of the files that ``make fuzz`` makes a hundred thousand of, and files made to be slow."""

import tempfile
from pathlib import Path

import pytest

from tests.fuzz.__main__ import run_batch
from tests.fuzz.check import CRSS, check

MB = 1_000_000
#: Up to 1 MB each, of what parsers find hard.
SLOW = {
    "blank lines": b"\n" * MB,
    "spaces": b" " * MB + b"1",
    "commas": b"," * MB,
    "quotes": b'"' * MB,
    "one long number": b"9" * MB,
    "one field a line": b"a\n" * (MB // 2),
    "quotes that do not pair": b"P,1,2,3\n" + b'"a"",1\n' * (MB // 7),
    "doubled quotes": b"P,1,2,3\n" + b'"' + b'""a' * (MB // 3),
    "wide lines": (b"1," * 499 + b"1\n") * 1000,
    "wide lines of spaces": (b" " * 999 + b"1\n") * 1000 + b"1 2 3 4 5",
    "exponents": b"P,1e3,1e3,1e3,a\n" * (MB // 16),
    "angles": b"48\xc2\xb007'02.28\"N;11\xc2\xb031'00.00\"E;545.4\n" * (MB // 46),
    "angles that are none": b"48 07 02.28 48 07 02;11 31 00 11 31 00;545.4\n" * (MB // 46),
    "nearly angles": (b"48" + b" " * 44 + b"x;") * (MB // 47),
    "sentences": b"$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47\r\n" * (MB // 70),
    "damaged sentences": b"$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*48\r\n" * (MB // 70),
    "asterisks": b"$GPGGA," + b"*" * MB,
    "short sentences": b"$GPGGA,*56\n" * (MB // 11),
    "modes": b"".join(b"$GNGNS,1,,,,,%d,,,,,,*00\n" % i for i in range(MB // 28)),
    "header words": b";".join([b"easting northing height (ft) [m]"] * (MB // 33)),
}


@pytest.mark.parametrize("name", SLOW)
@pytest.mark.parametrize("columns", [None, "lat,lon,height"])
def test_no_file_of_a_megabyte_takes_long(tmp_path, name, columns):
    options = {"columns": columns, "crs": CRSS[1], "geographic": True}
    assert check(tmp_path / "slow.txt", SLOW[name][:MB], options)


def test_a_few_mutated_files_break_no_rule():
    with tempfile.TemporaryDirectory() as folder:
        outcome, broken = run_batch((7, 400, folder))
    assert not broken, broken[0]
    assert outcome["points"] > 40
    assert len(outcome) > 8


def test_the_check_finds_a_broken_rule(tmp_path, monkeypatch):
    """Against a fuzz run that cannot fail: a reader that loses a line is found."""
    monkeypatch.setattr("plugin.core.points.rejects.LineAccount.__post_init__", lambda account: None)
    monkeypatch.setattr("plugin.core.points.assemble.make_rejects", _lose_one)
    with pytest.raises(AssertionError):
        check(Path(tmp_path / "lost.txt"), b"E;N;Z\n1.5;2.5;3.5\n1.5;oops;3.5\n", {})


def _lose_one(refused):
    from plugin.core.points.rejects import make_rejects

    return make_rejects(refused[1:])
