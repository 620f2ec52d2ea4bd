"""The code table: the one that ships, tables of one's own, and every way such a file can be wrong."""

import pytest

from plugin.core.linework.codes import DEFAULT_CODES, CodeKind, CodeRow, CodeTable, default_code_table, read_code_table
from plugin.core.linework.constraints import LineKind
from plugin.core.messages import SurveyError


def write(tmp_path, text, encoding="utf-8"):
    path = tmp_path / "codes.csv"
    path.write_bytes(text.encode(encoding))
    return path


def test_default_table():
    table = default_code_table()
    kinds = {row.code: row.kind.value for row in table.rows}
    assert kinds == {
        "GR": "ground", "SP": "ground", "CK": "check", "TR": "not_ground", "MH": "not_ground",
        "BD": "boundary", "VD": "void",
        **dict.fromkeys(["KT", "KF", "DT", "DB", "RT", "RB", "LE", "BL"], "breakline"),
    }  # fmt: skip
    assert all(row.layer for row in table.rows)
    assert {row.code for row in table.rows if row.closes} == {"BD", "VD"}
    assert table.source == str(DEFAULT_CODES)


def test_find_ignores_case_and_says_none_for_others():
    table = default_code_table()
    assert table.find("kt") is table.find("KT") is not None
    assert table.find("XX") is None
    assert table.find("KT").kind.line is LineKind.BREAKLINE
    assert CodeKind.CHECK.line is LineKind.NONE


@pytest.mark.parametrize("separator", [",", ";", "\t"])
@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "latin-1"])
def test_reads_any_usual_csv(tmp_path, separator, encoding):
    text = "# ours\nlayer,code,close,kind\n\nBöschung,B1,yes,Breakline\nBäume,T,,Not ground\n".replace(",", separator)
    table = read_code_table(write(tmp_path, text, encoding))
    assert table.rows == (
        CodeRow("B1", CodeKind.BREAKLINE, "Böschung", True),
        CodeRow("T", CodeKind.NOT_GROUND, "Bäume"),
    )


def test_close_column_and_short_rows_are_optional(tmp_path):
    assert len(read_code_table(write(tmp_path, "code,kind,layer\nA,ground,x\nB,void\n"))) == 2


@pytest.mark.parametrize(
    ("text", "code", "line"),
    [
        ("", "codes.no_rows", None),
        ("# only a comment\n", "codes.no_rows", None),
        ("code,kind,layer\n", "codes.no_rows", None),
        ("\n# c\ncode,layer\nA,x\n", "codes.missing_column", 3),
        ("code,kind,layer,colour\nA,ground,x,red\n", "codes.strange_column", 1),
        ("code,kind,layer,kind\nA,ground,x,void\n", "codes.strange_column", 1),
        ("code,kind,layer\nA,ground,x,y\n", "codes.row_too_long", 2),
        ("code,kind,layer\n\n,ground,x\n", "codes.no_code", 3),
        ("code,kind,layer\nA,ground,x\nB,void,x\na,void,x\n", "codes.twice", 4),
        ("code,kind,layer\n# c\nA,hill,x\n", "codes.strange_kind", 3),
        ("code,kind,layer\nA,,x\n", "codes.strange_kind", 2),
        ("code,kind,layer,close\nA,breakline,x,maybe\n", "codes.strange_close", 2),
        ("code,kind,layer,close\nA,ground,x,yes\n", "codes.close_without_line", 2),
        ("code,kind,layer,close\nA,boundary,x,no\n", "codes.always_closed", 2),
        ("code,kind,layer\nA,ground,\0\n", "codes.not_text", 2),
    ],
)
def test_errors_name_file_and_line(tmp_path, text, code, line):
    path = write(tmp_path, text)
    with pytest.raises(SurveyError) as caught:
        read_code_table(path)
    assert caught.value.code == code
    assert str(path) in str(caught.value)
    assert "\n" not in str(caught.value)
    assert caught.value.values.get("line") == line
    if line:
        assert f"line {line}" in str(caught.value)


@pytest.mark.parametrize("name", ["missing.csv", ""])
def test_a_path_that_cannot_be_read(tmp_path, name):
    with pytest.raises(SurveyError) as caught:
        read_code_table(tmp_path / name)
    assert caught.value.code == "codes.cannot_read"


def test_a_table_made_in_code_may_not_hold_a_code_twice():
    with pytest.raises(ValueError, match="twice"):
        CodeTable((CodeRow("A", CodeKind.GROUND), CodeRow("a", CodeKind.VOID)))
