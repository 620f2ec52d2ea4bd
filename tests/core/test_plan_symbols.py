"""The table that says how lines are drawn on the plan."""

import pytest

from plugin.core.handover.plan_symbols import NAMES, read_symbols, symbol_of
from plugin.core.linework.constraints import LineKind
from plugin.core.messages import SurveyError

HEADER = "words,kind,name,colour,width_mm,dashes,mark,every_mm\n"
LAST = ",,Other,#000000,0.2,,,\n"


def named(label, kind=LineKind.BREAKLINE):
    symbols = read_symbols()
    return symbols[symbol_of(symbols, label, kind)].name


@pytest.mark.parametrize(
    ("label", "name"),
    [
        ("KT 1", "Kerb or step (top)"),
        ("kf12", "Kerb or step (foot)"),
        ("LE", "Edge of paving"),
        ("DB 3", "Bottom of a ditch, gutter"),
        ("valley", "Bottom of a ditch, gutter"),
        ("step", "Kerb or step"),
        ("top", "Top of a slope"),
        ("BT 2", "Top of a bank"),
        ("ridge", "Crown, ridge"),
        ("KTX", "Other line"),  # another word
        ("", "Other line"),
        ("Fence 2", "Fence"),
        ("stepping stones", "Other line"),
    ],
)
def test_a_line_is_drawn_by_the_first_row_that_its_label_begins_with(label, name):
    assert named(label) == name


def test_ticks_stand_only_beside_lines_whose_higher_side_is_known():
    """A line of a field code runs as it was walked: its ticks could point uphill."""
    assert {symbol.words for symbol in read_symbols() if symbol.mark == "tick"} == {("top",)}


def test_kinds_go_before_labels():
    assert named("KT 1", LineKind.BOUNDARY) == "Boundary of the survey"
    assert named("", LineKind.VOID) == "Not surveyed"


def test_the_names_of_the_table_can_be_translated():
    assert {symbol.name for symbol in read_symbols()} == set(NAMES)


def test_a_table_of_ones_own(tmp_path):
    file = tmp_path / "mine.csv"
    file.write_text(HEADER + 'Bordure|KB,breakline,"Bordure, haut",#123456,0.5,3 1,tick,2\n' + LAST, encoding="utf-8")
    one, last = read_symbols(file)
    assert (one.words, one.kind, one.name, one.width) == (("bordure", "kb"), LineKind.BREAKLINE, "Bordure, haut", 0.5)
    assert (one.dashes, one.mark, one.every) == ((3.0, 1.0), "tick", 2.0)
    assert symbol_of((one, last), "bordure 7", LineKind.BREAKLINE) == 0
    assert symbol_of((one, last), "bordure 7", LineKind.VOID) == 1


@pytest.mark.parametrize(
    ("rows", "said"),
    [
        ("KT,,Kerb,red,0.2,,,\n" + LAST, "#rrggbb"),
        ("KT,,Kerb,#000000,0,,,\n" + LAST, "width_mm"),
        ("KT,,Kerb,#000000,0.2,3,,\n" + LAST, "dashes"),
        ("KT,,Kerb,#000000,0.2,,star,2\n" + LAST, "tick, cross, dot"),
        ("KT,,Kerb,#000000,0.2,,tick,\n" + LAST, "every_mm"),
        ("KT,kerb,Kerb,#000000,0.2,,,\n" + LAST, "breakline, boundary, void"),
        ("KT,,,#000000,0.2,,,\n" + LAST, "name"),
        ("KT,,Kerb,#000000,0.2,,,\n", "last row"),
        ("KT,,Other,#000000,0.2,,,\n" + LAST, "name"),
    ],
)
def test_what_cannot_be_drawn_is_refused_with_the_line(tmp_path, rows, said):
    file = tmp_path / "mine.csv"
    file.write_text(HEADER + rows, encoding="utf-8")
    with pytest.raises(SurveyError, match=said.replace("(", r"\(")):
        read_symbols(file)


def test_other_columns_are_refused(tmp_path):
    file = tmp_path / "mine.csv"
    file.write_text("code,colour\nKT,#000000\n", encoding="utf-8")
    with pytest.raises(SurveyError, match="words,kind,name"):
        read_symbols(file)
