"""Angles in the forms in which they are written."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from plugin.core.points.angles import parse_angle, parse_angles
from plugin.core.points.values import State


@pytest.mark.parametrize(("text", "role", "degrees"), [
    ("48.1173", "latitude", 48.1173), ("-48,1173", "latitude", -48.1173), ("48°07'02.28\"N", "latitude", 48.1173),
    ("48 07.038 N", "latitude", 48.1173), ("N 48°07.038'", "latitude", 48.1173), ("S48:07:02.28", "latitude", -48.1173),
    ("48-07-02.28S", "latitude", -48.1173), ("11d31m0s E", "longitude", 11 + 31 / 60), ("-0 30 0", "longitude", -0.5),
    ("48 07 02.28s", "latitude", -48.1173), ("48d07m02.28s", "latitude", 48.1173),
    ("48d07m02.28sS", "latitude", -48.1173),
    ("0°30'00\" W", "longitude", -0.5), ("11° 31′ 00,0″ E", "longitude", 11 + 31 / 60), ("180", "longitude", 180.0),
    ("4807.038", "latitude", None), ("0007.038", "latitude", None), ("48 60 00", "latitude", None),
    ("48 07 60", "latitude", None), ("48.5 07", "latitude", None), ("91", "latitude", None),
    ("90 00 01", "latitude", None), ("181", "longitude", None), ("-48 N", "latitude", None), ("48 E", "latitude", None),
    ("11 N", "longitude", None), ("N 48 N", "latitude", None), ("11 31 O", "longitude", None), ("", "latitude", None),
    ("north", "latitude", None),
])  # fmt: skip
def test_angles(text, role, degrees):
    """48°07.038' N and 11°31.000' E are the positions of a GGA sentence of public teaching material."""
    bytes_ = np.frombuffer((text + "\n").encode(), np.uint8)
    values, state = parse_angles(bytes_, np.array([0]), np.array([len(bytes_) - 1]), "," if "," in text else ".", role)
    if degrees is None:
        assert state[0] != State.VALUE
        assert np.isnan(values[0])
    else:
        assert state[0] == State.VALUE
        assert values[0] == pytest.approx(degrees, abs=1e-12)


def test_the_letter_o_is_what_one_says():
    assert parse_angle("11 30 O", "longitude", "E") == 11.5
    assert parse_angle("11 30 O", "longitude", "W") == -11.5


@given(st.integers(0, 89), st.integers(0, 59), st.integers(0, 5999), st.sampled_from("NS"))
def test_seconds_are_found_again(degree, minute, hundredths, letter):
    text = f"{degree}°{minute:02d}'{hundredths / 100:05.2f}\"{letter}"
    exact = (degree * 360000 + minute * 6000 + hundredths) / 360000
    assert parse_angle(text, "latitude") == pytest.approx(exact if letter == "N" else -exact, abs=1e-12)


@given(st.text(alphabet="0123456789.,°'\" NSEWO-+:dm", max_size=30))
def test_no_text_is_more_than_an_angle(text):
    value = parse_angle(text, "longitude", "E")
    assert value is None or abs(value) <= 180.0
