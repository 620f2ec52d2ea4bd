"""Delimited text to points: what is understood, what is refused, and that no line is lost."""

import itertools
from pathlib import Path

import numpy as np
import pytest

from plugin.core.messages import SurveyError
from plugin.core.points.delimited import read_points
from plugin.core.points.values import parse_words
from plugin.core.progress import Cancelled
from plugin.core.units import LengthUnit

#: name, easting, northing, height, code as written with a decimal point
ROWS = [
    ("P1", "548240.762", "5712395.593", "91.060", "kerb"),
    ("P2", "548248.25", "5712394.5", "-0.75", "Böschung"),
    ("", "548254", "5712397.920", "+90.356", ""),
    ("P4", "548260.001", "5712400.125", "90", "kerb"),
]
EASTINGS = [548240.762, 548248.25, 548254.0, 548260.001]
HEIGHTS = [91.060, -0.75, 90.356, 90.0]


@pytest.fixture
def survey(tmp_path):
    """Write text or bytes to a file and give its path."""

    def write(content, encoding="utf-8"):
        path = tmp_path / "survey.txt"
        path.write_bytes(content if isinstance(content, bytes) else content.encode(encoding))
        return path

    return write


def error_of(path, **options):
    with pytest.raises(SurveyError) as caught:
        read_points(path, **options)
    text = str(caught.value)
    assert "\n" not in text
    assert "survey.txt" in text or "--columns" in text
    return caught.value


DELIMITERS = {"comma": ",", "semicolon": ";", "tab": "\t", "spaces": "  ", "bar": "|"}
ENCODINGS = ["utf-8", "utf-8-sig", "utf-16", "latin-1", "utf-16-le"]
ENDS = {"lf": "\n", "crlf": "\r\n", "cr": "\r"}


@pytest.mark.parametrize("encoding", ENCODINGS)
@pytest.mark.parametrize("end", ENDS)
@pytest.mark.parametrize("header", [True, False])
@pytest.mark.parametrize("decimal", [".", ","])
@pytest.mark.parametrize("delimiter", DELIMITERS)
def test_every_form_gives_the_same_points(survey, delimiter, decimal, header, end, encoding):
    sign, quote = DELIMITERS[delimiter], ""
    if sign == decimal:
        quote = '"'  # a decimal comma between commas must be quoted
    lines = ["# field book"]
    if header:
        lines.append(sign.join(("Name", "Easting", "Northing", "Height", "Code")))
    for row in ROWS:
        fields = [row[0] or "P3", *(number.replace(".", decimal) for number in row[1:4]), row[4] or "ditch"]
        lines.append(sign.join(quote + field + quote for field in fields))
    lines.insert(-1, "")
    path = survey("".join(line + ENDS[end] for line in lines), encoding)
    columns = None if header else "name,easting,northing,height,code"
    result = read_points(path, columns=columns, delimiter="|" if sign == "|" else None)
    assert result.points.easting.tolist() == EASTINGS
    assert result.points.height.tolist() == HEIGHTS
    assert result.points.name.tolist() == ["P1", "P2", "P3", "P4"]
    assert result.points.code.tolist() == ["kerb", "Böschung", "ditch", "kerb"]
    first = 3 if header else 2
    assert result.points.source_line.tolist() == [first, first + 1, first + 2, first + 4]
    assert (result.format.delimiter, result.format.decimal) == (sign[0], decimal)
    account = result.account
    assert (account.points, account.comments, account.blanks, account.header) == (4, 1, 1, int(header))
    assert account.lines == len(lines)
    assumed = [note for note in result.messages if note.text.code == "points.encoding_assumed"]
    assert len(assumed) == (encoding == "latin-1")


def test_decimal_comma_is_recognised_beside_other_delimiters(survey):
    for sign in (";", "\t", " "):
        rows = "".join(sign.join(("548240,762", "5712395,593", f"{i},060")) + "\n" for i in range(9))
        result = read_points(survey(rows), columns="easting,northing,height")
        assert result.points.height.tolist() == [i + 0.06 for i in range(9)]


def test_comma_as_delimiter_and_decimal_mark_is_refused_without_a_header(survey):
    rows = "".join(f"P{i},100,25,200,75,9,125,kerb\n" for i in range(5))
    assert error_of(survey(rows), columns="name,easting,northing,height,code").code == "points.decimal_comma"
    assert error_of(survey(rows), columns="easting=2,northing=3,height=4").code == "points.decimal_comma"
    assert error_of(
        survey("P,1.0,2.0,3.0\n"), columns="-,easting,northing,height", delimiter=",", decimal=","
    ).code == ("points.same_mark")


def test_comma_as_delimiter_and_decimal_mark_is_read_where_the_header_tells_which_is_which(survey):
    rows = "".join(f"P{i},100,25,200,75,9,125,kerb\n" for i in range(5))
    result = read_points(survey("name,easting,northing,height,code\n" + rows))
    points = result.points
    assert (points.easting[0], points.northing[0], points.height[0]) == (100.25, 200.75, 9.125)
    assert points.code[4] == "kerb"
    assert "points.commas_for_all" in [note.text.code for note in result.messages]


def test_commas_of_uneven_halves_are_refused(survey):
    rows = "".join(f"P{i},100,{'25' if i else '257'},200,75,9,125,kerb\n" for i in range(5))
    assert error_of(survey("name,easting,northing,height,code\n" + rows)).code == "points.more_than_header"


def test_one_line_with_decimal_commas_among_others_is_a_reject(survey):
    result = read_points(
        survey("P1,1.5,2.5,3.5,kerb\nP2,1,5,2,5,3,5,kerb\n"), columns="name,easting,northing,height,code"
    )
    assert result.points.name.tolist() == ["P1"]
    assert result.rejects.reason[0].text.code == "reject.column_count"


@pytest.mark.parametrize(
    ("field", "code"),
    [
        ("", "empty"), ("nan", "no_value"), ("NaN", "no_value"), ("-", "no_value"), ("inf", "not_finite"),
        ("-Infinity", "not_finite"), ("1e999", "not_finite"), ("12.3.4", "not_a_number"), ("12,5", "not_a_number"),
        ("1_000", "not_a_number"), ("0x10", "not_a_number"), ("Ⅻ", "not_a_number"), ("12 5", "not_a_number"),
        ("+-3", "not_a_number"), (".", "not_a_number"), ("1e9", "too_large"), ("9" * 70, "not_a_number"),
    ],
)  # fmt: skip
@pytest.mark.parametrize("role", ["easting", "northing", "height"])
def test_a_line_without_its_coordinates_is_a_reject_with_line_and_reason(survey, role, field, code):
    values = {"easting": "10.5", "northing": "20.5", "height": "3.5"}
    bad = ";".join({**values, role: field}.values())
    result = read_points(survey(f"e;n;z\n10.5;20.5;3.5\n{bad}\n11.5;20.5;3.5\n"))
    assert result.points.source_line.tolist() == [2, 4]
    assert result.rejects.line.tolist() == [3]
    assert result.rejects.text.tolist() == [bad]
    reason = result.rejects.reason[0]
    assert reason.text.code == "reject." + code
    assert role in str(reason)


@pytest.mark.parametrize(
    "word",
    ["1", "-1", "+1.5", "1.", ".5", "-.5", "1e3", "1E-3", "-1.25e+02", "0.1", "123456789012345.5", "99999999.999999999",
     "0.000000000000001", "12345.678901234567", "00012.50", "1234567.8912345", "-0.0", "0.30000000000000004"],
)  # fmt: skip
def test_numbers_are_those_of_python(survey, word):
    if abs(float(word)) > 1e8:
        return
    result = read_points(
        survey(f"1,1,{word}\n1,1,2.125\n"), columns="easting,northing,height", decimal=".", height_unit=LengthUnit.METRE
    )
    assert result.points.height[0] == float(word)
    assert np.signbit(result.points.height[0]) == np.signbit(float(word))


def test_a_million_decimals_are_those_of_numpy_loadtxt(survey):
    """Reference: numpy.loadtxt (its own C reader), bit by bit, fields of 0 to 9 decimals."""
    random = np.random.default_rng(7)
    columns = [random.uniform(-1e7, 1e7, 20_000) for _ in range(3)]
    rows = [",".join(f"{value:.{i % 10}f}" for value in row) for i, row in enumerate(zip(*columns))]
    path = survey("\n".join(rows))
    result = read_points(path, columns="easting,northing,height", decimal=".", height_unit=LengthUnit.METRE)
    expected = np.loadtxt(path, delimiter=",")
    assert np.array_equal(
        np.column_stack([result.points.easting, result.points.northing, result.points.height]), expected
    )


def test_quoted_fields(survey):
    text = (
        '"P,1",1.5,2.5,3.5,"say ""kerb"""\nP2, "1.5" ,2.5,3.5,6" pipe\n"P3,1.5,2.5,3.5,kerb\n"P4"x,1.5,2.5,3.5,kerb\n'
    )
    result = read_points(survey(text), columns="name,easting,northing,height,code")
    assert result.points.name.tolist() == ["P,1", "P2"]
    assert result.points.code.tolist() == ['say "kerb"', '6" pipe']
    assert result.rejects.line.tolist() == [3, 4]
    assert {reason.text.code for reason in result.rejects.reason} == {"reject.bad_quotes"}


def test_quoted_lines_keep_their_place_in_the_order(survey):
    text = "".join(f'"P{i}" {i}.5 2.5 3.5\n' if i % 3 else f"P{i} {i}.5 2.5 3.5\n" for i in range(20))
    result = read_points(survey(text), columns="name,easting,northing,height")
    assert result.points.name.tolist() == [f"P{i}" for i in range(20)]
    assert result.points.source_line.tolist() == list(range(1, 21))


def test_words_after_the_last_text_belong_to_it(survey):
    text = "P1 1.5 2.5 3.5 kerb  left side\nP2 1.5 2.5 3.5\nP 3 1.5 2.5 3.5 kerb\nP4 1.5 2.5\n"
    result = read_points(survey(text), columns="name,easting,northing,height,code")
    assert result.points.code.tolist() == ["kerb  left side", ""]
    assert result.rejects.line.tolist() == [3, 4]
    text = 'P1,1.5,2.5,3.5,kerb\nP2,1.5,2.5,3.5,tree, old\n"P3",1.5,2.5,3.5,tree, old\nP4,1.5,2.5,3.5,kerb,,\n'
    result = read_points(survey(text), columns="name,easting,northing,height,code")
    assert result.points.code.tolist() == ["kerb", "tree, old", "tree,old", "kerb"]


def test_a_line_that_the_end_of_the_file_cuts_off_is_a_reject(survey):
    rows = "P1,1.5,2.5,31.25,kerb,0.01\n" * 3
    result = read_points(survey(rows + "P4,1.5,2.5,3"), columns="name,easting,northing,height,code,sigma_h")
    assert result.rejects.reason[0].text.code == "reject.cut_off"
    result = read_points(survey(rows + "P4,1.5,2.5,3\n"), columns="name,easting,northing,height,code,sigma_h")
    assert result.account.points == 4
    assert [note.text.code for note in result.messages] == ["points.short_lines"]
    assert np.isnan(result.points.sigma_h[3])


def test_optional_values_that_cannot_be_read_are_unknown_and_counted(survey):
    text = (
        "name,easting,northing,height,sigma_h,sigma_v,fix,satellites,pdop,tilt,time,battery\n"
        "P1,1,2,3,0.01,0.02,fixed,20,1.5,0.2,2025-04-09T07:06:02.5Z,full\n"
        "P2,1,2,3,bad,,FLOAT,x,1.5,,,\n"
        "P3,1,2,3,-1,nan,strange,,1.5,-2,soon,half\n"
    )
    result = read_points(survey(text), unit=LengthUnit.METRE)
    points = result.points
    assert len(points) == 3
    assert np.array_equal(points.sigma_h, [0.01, np.nan, np.nan], equal_nan=True)
    assert np.array_equal(points.sigma_v, [0.02, np.nan, np.nan], equal_nan=True)
    assert points.fix.tolist() == [4, 5, -1]
    assert np.array_equal(points.extra["satellites"], [20, np.nan, np.nan], equal_nan=True)
    assert np.array_equal(points.tilt, [0.2, np.nan, -2.0], equal_nan=True)
    assert points.extra["battery"].tolist() == ["full", "", "half"]
    counted = {note.values["role"]: (note.values["count"], note.values["line"]) for note in result.messages}
    assert counted == {"sigma_h": (2, 3), "fix": (1, 4), "satellites": (1, 3), "time": (1, 4)}


@pytest.mark.parametrize(
    ("word", "seconds"),
    [
        ("2025-04-09T07:06:02.500Z", 1744182362.5), ("2025-04-09 07:06:02", 1744182362.0),
        ("2025-04-09T09:06:02+02:00", 1744182362.0), ("20250409T07:06:02Z", 1744182362.0),
        ("2025-04-09", 1744156800.0), ("1744182362.25", 1744182362.25), ("07:06:02.5", 25562.5),
        ("2024-02-29T00:00:00Z", 1709164800.0), ("1970-01-01T00:00:00", 0.0), ("2025-04-09T07:06:02,5", 1744182362.5),
        ("2025-02-29T00:00:00Z", None), ("2025-13-01T00:00:00Z", None), ("2025-04-09T25:00:00Z", None), ("NaT", None),
        ("now", None), ("1e300", None),
    ],
)  # fmt: skip
def test_times(survey, word, seconds):
    """Seconds from the Unix epoch, checked with date -u of GNU coreutils and the calendar."""
    rows = f"e;n;z;time\n1;2;3.5;{word}\n1;2;3.5;2025-04-09T07:06:02Z\n"
    result = read_points(survey(rows), decimal=".", unit=LengthUnit.METRE)
    if seconds is None:
        assert np.isnan(result.points.time[0])
        assert result.messages[0].values["role"] == "time"
    else:
        assert result.points.time[0] == seconds
        assert not result.messages
    assert result.points.time[1] == 1744182362.0


def test_fix_words_and_numbers(survey):
    """Numbers of NMEA 0183 GGA, as commonly described."""
    words = ["0", "1", "2", "4", "5", "fixed", "Float", "single", "DGPS", "none", "RTK_FIXED", "4.0", "", "9"]
    result = read_points(survey("e;n;z;fix\n" + "".join(f"1;2;3.5;{word}\n" for word in words)))
    assert result.points.fix.tolist() == [0, 1, 2, 4, 5, 4, 5, 1, 2, 0, 4, 4, -1, -1]


def test_feet_become_metres(survey):
    """NIST SP 811: international foot 0.3048 m exactly, U.S. survey foot 1200/3937 m exactly."""
    path = survey("e,n,z,sigma_h,sigma_v\n3937.0,7874.0,100.0,0.1,0.2\n")
    points = read_points(path, unit=LengthUnit.US_SURVEY_FOOT).points
    assert points.easting[0] == pytest.approx(1200.0, rel=1e-15)
    assert points.northing[0] == pytest.approx(2400.0, rel=1e-15)
    assert points.height[0] == pytest.approx(100 * 1200 / 3937, rel=1e-15)
    points = read_points(path, unit=LengthUnit.METRE, height_unit=LengthUnit.FOOT).points
    assert points.easting[0] == 3937.0
    assert points.height[0] == pytest.approx(30.48, rel=1e-15)
    assert points.sigma_h[0] == 0.1
    assert points.sigma_v[0] == pytest.approx(0.06096, rel=1e-15)


def test_the_unit_is_that_of_the_crs_unless_said(survey):
    pyproj = pytest.importorskip("pyproj")
    path = survey("e,n,z\n3937.0,7874.0,100.0\n")
    assert read_points(path, crs=pyproj.CRS("EPSG:2263")).points.easting[0] == pytest.approx(1200.0, rel=1e-15)
    assert read_points(path, crs=pyproj.CRS("EPSG:2263"), unit=LengthUnit.METRE).points.easting[0] == 3937.0
    mixed = read_points(path, crs=pyproj.CRS("EPSG:25832+6360")).points  # heights NAVD88 in US survey feet
    assert mixed.easting[0] == 3937.0
    assert mixed.height[0] == pytest.approx(100 * 1200 / 3937, rel=1e-15)


def test_header_in_foot(survey):
    """Which foot is not said: asked. Read in another unit on the user's word: doubted."""
    path = survey("name,E (ft),N [ft],Elevation (ft)\nP1,1.5,2.5,3.5\n")
    asked = error_of(path)
    assert asked.code == "points.ambiguous"
    assert [each.typed for each in asked.questions[0].answers] == ["--unit ft", "--unit us-ft"]
    against = error_of(path, unit=LengthUnit.METRE, height_unit=LengthUnit.METRE)
    assert [each.typed for each in against.questions[0].answers] == ["--units-from header", "--units-from options"]
    assert len(against.questions) == 1
    doubted = read_points(path, unit=LengthUnit.METRE, height_unit=LengthUnit.METRE, units_from="options")
    assert [note.text.code for note in doubted.messages] == ["points.header_unit"] * 3
    assert not read_points(path, unit=LengthUnit.FOOT).messages


@pytest.mark.parametrize(
    "header",
    [
        "name,easting,northing,height",
        "ID,East,North,Elevation",
        "POINT,E,N,Z",
        " Name , Easting , Northing , Height ",
    ],
)
def test_obvious_header_words(survey, header):
    result = read_points(survey(f"{header}\nP1,1.5,2.5,3.5\n"))
    assert (result.points.name[0], result.points.easting[0], result.points.height[0]) == ("P1", 1.5, 3.5)
    assert result.account.header == 1


def test_x_and_y_may_be_meant_either_way(survey):
    """East is X in most files and Y in some countries' (common practice, no source)."""
    asked = error_of(survey("pt,x,y,z\nP1,1.5,2.5,3.5\n"))
    assert asked.code == "points.ambiguous"
    assert "easting=2,northing=3" in str(asked)
    assert "northing=2,easting=3" in str(asked)


def test_header_in_a_comment_line_counts_as_comment(survey):
    result = read_points(survey("# made in the field\n# name,e,n,z\nP1,1.5,2.5,3.5\n"))
    assert (result.account.comments, result.account.header, result.points.name[0]) == (2, 0, "P1")


def test_title_lines_above_the_header_are_rejects(survey):
    result = read_points(survey("Pippin Field\nname,e,n,z\nm,m,m,m\nP1,1.5,2.5,3.5\n"))
    assert result.format.header.line == 2
    assert result.rejects.line.tolist() == [1, 3]


def test_a_first_line_with_a_bad_value_is_no_header(survey):
    for bad in ("P1,nan,nan,nan,kerb", "P1,,,,kerb", "P1,oops,2.5,3.5,kerb"):
        result = read_points(survey(f"{bad}\nP2,1.5,2.5,3.5,kerb\n"), columns="name,easting,northing,height,code")
        assert result.rejects.line.tolist() == [1]
    assert read_points(survey("1.0,2.0,3.0\n"), columns="easting,northing,height", header=False).account.points == 1
    result = read_points(survey("1.0,2.0,3.0\n4.0,5.0,6.0\n"), columns="easting,northing,height", header=True)
    assert (result.account.points, result.account.header) == (1, 1)


def test_mapping_by_words_numbers_and_skips(survey):
    text = "Nr,Rechts,Hoch,Z,Art,Akku\n1,1.5,2.5,3.5,kerb,90\n"
    result = read_points(survey(text), columns="easting=rechts,northing=Hoch,height=4,code=Art")
    assert (result.points.easting[0], result.points.height[0], result.points.code[0]) == (1.5, 3.5, "kerb")
    assert result.points.extra["Nr"].tolist() == ["1"]
    assert result.points.extra["Akku"].tolist() == ["90"]
    result = read_points(survey(text), columns="-,easting,northing,height,+kind")
    assert sorted(result.points.extra) == ["Akku", "kind"]
    result = read_points(survey("1.5,2.5,3.5,kerb,90\n"), columns="easting,northing,height")
    assert sorted(result.points.extra) == ["column_4", "column_5"]


def test_header_that_contradicts_the_mapping_is_told(survey):
    result = read_points(
        survey("name,northing,easting,height\nP1,1.5,2.5,3.5\n"), columns="name,easting,northing,height"
    )
    assert [note.text.code for note in result.messages] == ["points.header_says_other"] * 2


def test_other_comment_marks(survey):
    text = "// a\n  // b\n#P1 1.5 2.5 3.5\n"
    result = read_points(survey(text), columns="name,easting,northing,height", comment="//")
    assert (result.account.comments, result.points.name[0]) == (2, "#P1")
    assert (
        read_points(survey("#P1 1.5 2.5 3.5\n"), columns="name,easting,northing,height", comment="").account.points == 1
    )


BAD_FILES = {
    "points.empty_file": (b"", {}),
    "points.binary_file": (bytes(range(256)) * 20, {}),
    "points.only_header": (b"name,easting,northing,height\n", {}),
    "points.no_data": (b"# only\n\n# comments\n", {}),
    "points.wrong_delimiter": (b"P1,1.5,2.5,3.5\n", {"delimiter": ";", "columns": "name,easting,northing,height"}),
    "points.columns_not_said": (b"P1,1.5,2.5,3.5\n", {}),
    "points.text_in_every_line": (b"P1,a1,2.5,3.5\nP2,a2,2.5,3.5\n", {"columns": "name,easting,northing,height"}),
    "points.no_value_in_any_line": (
        b"1.5,2.5,3.5,abc\n1.5,2.5,3.5,abc\n", {"columns": "easting,northing,height,sigma_h"},
    ),
    "points.too_few_everywhere": (b"1.5,2.5,3.5\n", {"columns": "name,code,easting,northing,height"}),
    "points.no_such_column": (b"1.5,2.5,3.5\n", {"columns": "easting,northing,height,code"}),
    "points.no_header_word": (b"a,b,c\n1.5,2.5,3.5\n", {"columns": "easting=a,northing=b,height=d"}),
    "points.no_header": (b"1.5,2.5,3.5\n", {"columns": "easting=a,northing=b,height=c"}),
    "points.no_points": (b"P1,1.5,2.5,nan\nP2,1.5,2.5,nan\n", {"columns": "name,easting,northing,height"}),
    "points.unknown_encoding": (b"1,2,3\n", {"encoding": "klingon"}),
    "points.wrong_encoding": (b"1,2,\xff\n", {"encoding": "utf-8"}),
    "points.bad_delimiter": (b"1,2,3\n", {"delimiter": "ab"}),
    "points.bad_decimal": (b"1,2,3\n", {"decimal": ";", "columns": "easting,northing,height"}),
    "points.too_many_columns": (b"1," * 2000 + b"\n", {"columns": "easting,northing,height"}),
}  # fmt: skip


@pytest.mark.parametrize("code", BAD_FILES)
def test_bad_files_are_one_line_errors(survey, code):
    content, options = BAD_FILES[code]
    assert error_of(survey(content), **options).code == code


def test_missing_file_and_folder(tmp_path):
    for path, code in ((tmp_path / "none.csv", "points.missing_file"), (tmp_path, "points.folder")):
        with pytest.raises(SurveyError) as caught:
            read_points(path)
        assert caught.value.code == code
        assert str(path) in str(caught.value)


def test_order_of_lines_is_kept_and_does_not_matter_otherwise(survey):
    rows = [f"P{i},{i}.5,{2 * i}.25,{i % 7}.125,kerb\n" for i in range(5000)]
    shuffled = list(np.random.default_rng(3).permutation(len(rows)))
    columns = "name,easting,northing,height,code"
    plain = read_points(survey("".join(rows)), columns=columns).points
    mixed = read_points(survey("".join(rows[i] for i in shuffled)), columns=columns).points
    assert mixed.source_line.tolist() == list(range(1, 5001))
    assert np.array_equal(mixed.easting, plain.easting[shuffled])
    assert np.array_equal(mixed.name, plain.name[shuffled])


def test_a_big_file_in_many_blocks(survey):
    """Lines of many blocks, with rejects, comments, blanks and quotes between them, each at its own number."""
    kinds = itertools.cycle(["point"] * 7 + ["reject", "comment", "blank", "quoted", "point"])
    lines, expected = [], {"point": [], "reject": []}
    for number, kind in zip(range(1, 120_001), kinds):
        if kind not in ("comment", "blank"):
            expected["reject" if kind == "reject" else "point"].append(number)
        lines.append(
            {"reject": f"P{number},1.5,oops,3.5", "comment": "# note", "blank": "  "}.get(
                kind, f'"P{number}",{number}.5,2.5,3.5' if kind == "quoted" else f"P{number},{number}.5,2.5,3.5"
            )
        )
    fractions = []
    result = read_points(
        survey("\r\n".join(lines)),
        columns="name,easting,northing,height",
        progress=lambda fraction, stage: fractions.append(fraction),
    )
    assert result.points.source_line.tolist() == expected["point"]
    assert result.points.easting.tolist() == [number + 0.5 for number in expected["point"]]
    assert result.points.name.tolist() == [f"P{number}" for number in expected["point"]]
    assert result.rejects.line.tolist() == expected["reject"]
    assert (result.account.comments, result.account.blanks) == (10_000, 10_000)
    assert fractions == sorted(fractions)
    assert len(fractions) > 3


def test_reading_can_be_cancelled(survey):
    def stop(fraction, stage):
        raise Cancelled

    with pytest.raises(Cancelled):
        read_points(survey("1.5,2.5,3.5\n"), columns="easting,northing,height", progress=stop)


def test_a_pass_recorded_every_half_metre_keeps_its_spacing(survey):
    """A rover that records every 0.5 m (common practice, no source): written in US survey feet to 1/10000 ft,
    read back in metres, the spacing stands to the rounding of the file. Foot of NIST SP 811.
    """
    along = 0.5 * np.arange(2000)
    east, north = 548240.0 + along * np.cos(0.7), 5712395.0 + along * np.sin(0.7)
    foot = 1200 / 3937
    rows = "".join(f"{e / foot:.4f}\t{n / foot:.4f}\t{91.06 / foot:.4f}\n" for e, n in zip(east, north))
    points = read_points(survey(rows), columns="easting,northing,height", unit=LengthUnit.US_SURVEY_FOOT).points
    steps = np.hypot(np.diff(points.easting), np.diff(points.northing))
    assert np.abs(steps - 0.5).max() < 2 * 0.0001 * foot
    assert abs(steps.mean() - 0.5) < 1e-6


def test_the_demo_survey_is_accounted_for():
    path = Path(__file__).parents[2] / "test_data" / "demo" / "survey.csv"
    result = read_points(path)
    lines = path.read_text(encoding="utf-8").splitlines()
    assert result.account.lines == len(lines)
    assert result.account.rejects > 0
    for number in result.rejects.line:
        fields = lines[number - 1].split(",")
        with pytest.raises((ValueError, IndexError)):
            _ = [float(fields[place]) for place in (1, 2, 3)]
    names = [lines[number - 1].split(",")[0] for number in result.points.source_line]
    assert result.points.name.tolist() == names


@pytest.mark.parametrize("kinds", [1, 3, 200, 40_000])
def test_words_are_those_of_the_fields_however_rare(kinds):
    """Few kinds, one of them once only, and as many as there are fields."""
    rng = np.random.default_rng(kinds)
    words = [f"{number:x}"[:8] for number in rng.integers(0, kinds, 20_000)]
    words[12_345] = "once"
    text = np.frombuffer((",".join(words) + "\n").encode(), np.uint8)
    size = np.array([len(word) for word in words])
    end = np.cumsum(size + 1) - 1
    assert parse_words(text, end - size, end).tolist() == words
