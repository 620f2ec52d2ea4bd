"""Columns of numbers as text: the doubles that come back are those that Python's own ``float`` reads."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plugin.core.handover.digits import from_digits, to_digits


def letters(*lines):
    return np.array([list(line.encode()) for line in lines], np.uint8)


def words(text):
    return [row.tobytes().decode().split() for row in text]


@settings(max_examples=200, deadline=None)
@given(
    st.lists(st.tuples(*(st.integers(1 - 10**14, 10**14 - 1),) * 2), min_size=1, max_size=20),
    st.integers(0, 9),
    st.integers(0, 6),
)
def test_what_is_written_is_read_as_float_reads_it(rows, first, second):
    values = np.array(rows, np.int64)
    text = np.hstack([to_digits(values[:, 0], first), to_digits(values[:, 1], second)])
    assert [[float(word) for word in line] for line in words(text)] == [
        [a / 10**first, b / 10**second] for a, b in rows
    ]
    back = from_digits(text)
    assert back is not None
    assert back.tolist() == [[float(word) for word in line] for line in words(text)]


@settings(max_examples=500, deadline=None)
@given(st.lists(st.text("0123456789.- +e", min_size=7, max_size=7), min_size=1, max_size=5))
def test_nothing_is_read_that_float_would_read_otherwise(lines):
    """Any letters in columns: either not understood, or as ``float`` has it."""
    back = from_digits(letters(*lines))
    if back is not None:
        assert back.tolist() == [[float(word) for word in line.split()] for line in lines]


@pytest.mark.parametrize(
    "lines",
    [(" 1.5", "1.50"), ("1 2", "123"), ("- 5",), ("  .5",), ("1-5",), ("nan",), ("1e5",), ("5.",), ("--5",), ("   ",)],
)
def test_what_is_not_plain_columns_is_not_guessed(lines):
    back = from_digits(letters(*lines))
    assert back is None or back.tolist() == [[float(word) for word in line.split()] for line in lines]


def test_more_digits_than_a_double_holds_are_left_to_others():
    assert from_digits(letters(" 1234567890123456")) is None
