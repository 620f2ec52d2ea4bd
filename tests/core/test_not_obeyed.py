"""Constants in heights and points called deleted: told, with the lines and what to do, and nothing changed unasked."""

import pytest
from pyproj import CRS

from plugin.core.georeference.intake import take_in
from plugin.core.georeference.intake_options import IntakeOptions
from plugin.core.georeference.level_shift import parse_level_shifts

UTM32 = CRS.from_epsg(25832)


def came(tmp_path, head="Pt,Easting,Northing,H", above="", last=(), options=None):
    """What came of a survey of 20 points with heights about 90 m, ``last`` the cells of a column behind them."""
    rows = [f"{i},{548240.1 + i * 0.5:.3f},{5712395.2 + i * 0.3:.3f},{90 + i * 0.01:.3f}" for i in range(20)]
    rows = [f"{row},{last[i % len(last)]}" if last else row for i, row in enumerate(rows)]
    path = tmp_path / "survey.csv"
    path.write_text("\n".join([*above.splitlines(), head, *rows]) + "\n", encoding="utf-8")
    return take_in([path], options or IntakeOptions(crs=UTM32))


def told(intake):
    return [(one.text.weight, str(one)) for one in intake.messages if one.text.code.startswith("not_obeyed")]


@pytest.mark.parametrize(
    ("head", "above"),
    [
        ("H - 200", ""), ("H-200", ""), ("H (+200)", ""), ("Height −200.00", ""),
        ("H", "All heights reduced by 200 m"), ("H", "Höhen: 200 m + Wert"), ("H", "Alle Höhen um 200 m vermindert um"),
        ("H", "altitudes : 200 m retranchés"), ("H", "Cotas: sumados 200 m"), ("H", "Heights +200"),
    ],
)  # fmt: skip
def test_a_constant_is_told_with_the_option_that_takes_it_off(tmp_path, head, above):
    intake = came(tmp_path, f"Pt,Easting,Northing,{head}", above)
    ((weight, said),) = told(intake)
    first = 2 + bool(above)
    assert weight == 3
    assert f"--shift-heights {first}:200 or --shift-heights {first}:-200" in said
    assert intake.survey.points.height[0] == pytest.approx(90.0)
    shifted = came(tmp_path, f"Pt,Easting,Northing,{head}", above, options=IntakeOptions(
        crs=UTM32, level_shifts=parse_level_shifts(f"{first}:200")))  # fmt: skip
    assert shifted.survey.points.height[[0, -1]] == pytest.approx([290.0, 290.19])
    assert told(shifted) == []


@pytest.mark.parametrize(
    ("head", "above"),
    [
        ("H", "Heights above NHN, accuracy +/- 20 mm"), ("H", "Height of the pole 2.00 m, subtracted"),
        ("H (m)", ""), ("H DHHN-92", ""), ("Elevation NAVD-88", ""), ("H - 2019", ""),
        ("H", "Heights by levelling, less than 20 points"), ("H", "Job 17 + 18"),
        ("H", "Geoid undulation added 47.31 m"), ("H", "Level 2 - 31 plots"),
    ],
)  # fmt: skip
def test_years_tolerances_and_poles_are_no_constants(tmp_path, head, above):
    options = IntakeOptions(crs=UTM32, heights_of="ground")
    assert told(came(tmp_path, f"Pt,Easting,Northing,{head}", above, options=options)) == []


@pytest.mark.parametrize(
    ("head", "cells", "word"),
    [
        ("Status", ("ok", "deleted"), "deleted"), ("Use", ("1", "0"), "0"), ("Valid", ("TRUE", "FALSE"), "FALSE"),
        ("Deleted", ("no", "yes"), "yes"), ("Estado", ("", "ELIMINADO"), "ELIMINADO"),
        ("Code", ("GR", "gelöscht"), "gelöscht"), ("Zustand", ("", "verworfen"), "verworfen"),
        ("Utilisé", ("oui", "non"), "non"),
    ],
)  # fmt: skip
def test_points_called_deleted_are_told_and_stay(tmp_path, head, cells, word):
    intake = came(tmp_path, f"Pt,Easting,Northing,H,{head}", last=cells)
    ((weight, said),) = told(intake)
    assert weight == 2
    assert "calls 10 points" in said
    assert f"“{word}” in line 3" in said
    assert len(intake.survey.points) == 20


@pytest.mark.parametrize(
    ("head", "cells"),
    [("Use", ("1",)), ("Use", ("0",)), ("Code", ("GR", "KB")), ("Class", ("0", "1")), ("Land use", ("meadow",))],
)
def test_columns_that_say_nothing_of_the_kind_are_silent(tmp_path, head, cells):
    assert told(came(tmp_path, f"Pt,Easting,Northing,H,{head}", last=cells)) == []
