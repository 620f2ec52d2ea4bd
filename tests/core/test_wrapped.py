"""Rows of lists made bare, and lines left alone that only look like such."""

import pytest

from plugin.core.points.below import has_numbers
from plugin.core.points.wrapped import unwrapped


@pytest.mark.parametrize(
    ("line", "bare"),
    [
        ("INSERT INTO p VALUES ('P1', 1.5, 2.5, 3.5);", '"P1", 1.5, 2.5, 3.5'), ("P1 1.5 2.5 3.5;", "P1 1.5 2.5 3.5"),
        ("P1: 1.5, 2.5, 3.5", "P1,1.5, 2.5, 3.5"),
        ("P1,'548240.762,'5712395.593,92.1", "P1,548240.762,5712395.593,92.1"),
        ("P1;E548240.762;N5712395.593;92.1", "P1;548240.762;5712395.593;92.1"),
        ("P1;[1.5];[2.5];[3.5]", "P1;1.5;2.5;3.5"),
    ],
)  # fmt: skip
def test_rows_are_made_bare(line, bare):
    lines = [line] * 5
    assert unwrapped("\n".join(lines).encode(), lines) == "\n".join([bare] * 5).encode()


@pytest.mark.parametrize(
    "line",
    [
        "P1,1.5,2.5,3.5", "P1;1.5;2.5;3.5;", "P1;N51.5;E9.5;3.5", "POINT Z (1.5 2.5 3.5)", "P1 1.5 2.5 3.5 (tree)",
        "07:06:02.5,1.5,2.5", "P1,1.5,2.5,3.5,[KT 1]",
    ],
)  # fmt: skip
def test_other_rows_stay(line):
    lines = [line] * 5
    data = "\n".join(lines).encode()
    assert unwrapped(data, lines) == data


def test_page_numbers_are_no_points():
    assert not has_numbers("Page 1 of 3")
    assert not has_numbers("Sheet 2, 3")
    assert has_numbers("P1 12.5 13.5")
    assert has_numbers("548240 5712395")
