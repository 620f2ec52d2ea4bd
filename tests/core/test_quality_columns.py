"""What receivers say of quality, under words put together and in words of several languages."""

import numpy as np
import pytest

from plugin.core.points.survey import read_survey
from plugin.core.points.values import are_fixes, fix_of_word
from plugin.core.points.words import read_word


def read(tmp_path, head, *cells):
    path = tmp_path / "survey.csv"
    rows = [f"{i};{500.1 + i:.3f};{700.2 + i * 0.7:.3f};{90.3 + i * 0.01:.3f};{cell}" for i, cell in enumerate(cells)]
    path.write_text("\n".join([f"P;E;N;Z;{head}", *rows]) + "\n", encoding="utf-8")
    return read_survey(path).points


@pytest.mark.parametrize(
    ("word", "role"),
    [
        ("Hz Prec", "sigma_h"), ("Vt Prec (ft)", "sigma_v"), ("Lage-Gen.", "sigma_h"), ("Höhengen.", "sigma_v"),
        ("Position quality", "sigma_h"), ("Genauigkeit Höhe", "sigma_v"), ("H prec", "sigma_h"), ("vAcc", "sigma_v"),
        ("Écart-type plani", "sigma_h"), ("Lattenhöhe", "pole_height"), ("Rod hgt", "pole_height"), ("Accuracy", ""),
        ("Hauteur de la canne", "pole_height"), ("Antenna type", ""), ("SN", ""), ("Height", "height"), ("Pos", ""),
    ],
)  # fmt: skip
def test_words_put_together(word, role):
    assert read_word(word).role == role


@pytest.mark.parametrize("head", ["Hz Prec (ft);Vt Prec (ft)", "Lage-Gen. [ft];Höhengen. [ft]"])
def test_units_of_deviations_are_obeyed(tmp_path, head):
    points = read(tmp_path, head, *["0.040;0.070"] * 6)
    assert points.sigma_h[0] == pytest.approx(0.040 * 0.3048)
    assert points.sigma_v[0] == pytest.approx(0.070 * 0.3048)


def test_deviations_of_both_axes_make_one_in_plan(tmp_path):
    points = read(tmp_path, "sE(mm);sN(mm);sH(mm)", *["9;12;21"] * 6)
    assert points.sigma_h[0] == pytest.approx(0.015)  # the hypotenuse of 9 and 12
    assert points.sigma_v[0] == pytest.approx(0.021)
    assert "sigma_e" not in points.extra


def test_one_axis_alone_is_no_deviation_in_plan(tmp_path):
    points = read(tmp_path, "SN", *["4711"] * 6)
    assert np.isnan(points.sigma_h).all()
    assert list(points.extra) == ["SN"]


@pytest.mark.parametrize(
    ("words", "fixes"),
    [
        (["FIXED", "FLOAT"], [4, 5]), (["RTK fixiert", "Autonom"], [4, 1]), (["Fijo", "Flotante"], [4, 5]),
        (["RTK_FIX", "No fix"], [4, 0]), (["fixe", "DGPS"], [4, 2]), (["Narrow-Int", "single"], [4, 1]),
    ],
)  # fmt: skip
@pytest.mark.parametrize("head", ["Status", "Lösung", "Zustand"])
def test_the_quality_of_positions_in_words(tmp_path, words, fixes, head):
    points = read(tmp_path, head, *(words * 4))
    assert points.fix.tolist() == fixes * 4


@pytest.mark.parametrize("words", [["used", "rejected"], ["GS", "KT 1"], ["ok", "bad"], ["gps", "none"], ["", ""]])
def test_other_words_are_no_quality(tmp_path, words):
    assert not are_fixes([word for word in words if word])
    assert (read(tmp_path, "Status", *(words * 4)).fix < 0).all()


def test_words_that_say_nothing_of_quality():
    assert fix_of_word("kerb") == -1
    assert fix_of_word("not a fix of any kind at all") == -1
