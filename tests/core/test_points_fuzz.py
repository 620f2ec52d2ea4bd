"""Whatever the bytes: a SurveyError in one line, or points and rejects that account for every line."""

import math
import re

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from plugin.core.messages import SurveyError
from plugin.core.points.decisions import read_decisions
from plugin.core.points.delimited import read_points

NUMBERS = st.one_of(
    st.floats(-1e6, 1e6).map("{:.3f}".format),
    st.floats().map(str),
    st.integers(-(10**20), 10**20).map(str),
    st.sampled_from(
        ["", "nan", "-inf", "1e5", "1,5", ".", "-", "+", "1.", ".5", "1e", "٣", " 12.5 ", "00", '"1.5"', '"1,5"']
    ),
)
TEXTS = st.one_of(
    st.sampled_from(
        ["P1", "kerb", "", '"', '""', '"a, b"', '"a', "#x", "Straße", "tree old", "2025-04-09T07:06:02Z", "fixed"]
    ),
    st.text(alphabet='aé"#;,\t |\x1f\x85\u2028\ufeff', max_size=6),
)
ROW = st.tuples(TEXTS, NUMBERS, NUMBERS, NUMBERS, TEXTS, NUMBERS, TEXTS, TEXTS).flatmap(
    lambda row: st.integers(0, 8).map(lambda count: row[:count])
)
LINE = st.one_of(
    ROW, ROW, ROW, st.sampled_from([("#", "note"), ("name", "easting", "northing", "height", "code"), ("  ",)])
)


@st.composite
def surveys(draw):
    sign = draw(st.sampled_from([",", ";", "\t", " ", "  ", ", "]))
    ends = draw(st.sampled_from([("\n",), ("\r\n",), ("\r",), ("\n", "\r\n", "\r", "\n\r")]))
    text = "".join(sign.join(line) + draw(st.sampled_from(ends)) for line in draw(st.lists(LINE, max_size=12)))
    raw = text.encode(draw(st.sampled_from(["utf-8", "utf-8-sig", "utf-16", "latin-1", "cp1252"])), "replace")
    cut = draw(st.integers(0, 12))
    return raw[: len(raw) - cut] if cut < 6 else raw


OPTIONS = st.fixed_dictionaries(
    {
        "columns": st.sampled_from(
            [
                None,
                "name,easting,northing,height,code",
                "name,easting,northing,height,code,sigma_h,time,fix",
                "easting,northing,height",
                "easting=2,northing=3,height=4",
                "easting=easting,northing=northing,height=height",
            ]
        ),
        "delimiter": st.sampled_from([None, None, None, ",", ";", " ", "tab"]),
        "decimal": st.sampled_from([None, None, ".", ","]),
        "header": st.sampled_from([None, None, True, False]),
        "comment": st.sampled_from(["#", "#", "", "//", None]),
        "encoding": st.sampled_from([None, None, None, "latin-1", "utf-8", "utf-16", "punycode", "idna"]),
    }
)


def check(path, raw, options):
    path.write_bytes(raw)
    try:
        result = read_points(path, **options)
    except SurveyError as error:
        refused = str(error)
    else:
        refused = None
    if refused is not None:
        assert refused
        assert "\n" not in refused
        return
    points, rejects, account = result.points, result.rejects, result.account
    assert account.points == len(points) > 0
    assert all(math.isfinite(value) for column in (points.easting, points.northing, points.height) for value in column)
    numbers = points.source_line.tolist() + rejects.line.tolist()
    assert len(set(numbers)) == len(numbers)
    assert points.source_line.tolist() == sorted(points.source_line)
    assert rejects.line.tolist() == sorted(rejects.line)
    assert all(str(reason) for reason in rejects.reason)
    assert all(len(values) == len(points) for values in points.extra.values())
    lines = lines_of(raw, result.format.encoding)
    assert account.lines == len(lines)
    comment = options["comment"] or None
    header = result.format.header
    for number, line in enumerate(lines, 1):
        if header is not None and number == header.line and not header.comment:
            assert number not in numbers
        else:
            ignored = not line.strip(" \t") or (comment and line.strip(" \t").startswith(comment))
            assert (number in numbers) != bool(ignored), (number, line)
    assert rejects.text.tolist() == [lines[number - 1] for number in rejects.line]


def lines_of(raw, encoding):
    """The lines of a file, found another way than by the reader."""
    text = raw.decode(encoding)
    lines = re.split("\r\n|\r|\n", text[1:] if text.startswith("\ufeff") else text)
    return lines[:-1] if lines[-1] == "" else lines


FUZZ = settings(max_examples=400, deadline=None, suppress_health_check=list(HealthCheck))


@FUZZ
@given(surveys(), OPTIONS)
def test_mutated_surveys_are_accounted_for(tmp_path_factory, raw, options):
    check(tmp_path_factory.getbasetemp() / "fuzz.txt", raw, options)


@FUZZ
@given(st.one_of(st.binary(max_size=300), st.text(max_size=200).map(lambda text: text.encode("utf-8"))), OPTIONS)
def test_any_bytes_are_an_error_or_accounted_for(tmp_path_factory, raw, options):
    check(tmp_path_factory.getbasetemp() / "fuzz.txt", raw, options)


DECISION = st.tuples(
    st.sampled_from(["1", "2", "x", "", "-1", "9" * 30, "²"]),
    st.sampled_from(["used", "Rejected", "flagged", "", "gone", '"']),
    st.sampled_from(["", "by_hand", "tilt+no_fix", "+", "why"]),
)


@FUZZ
@given(
    st.lists(DECISION, max_size=4), st.sampled_from(["line,status,reason", "status,reason", "", "line;status;reason"])
)
def test_decisions_are_read_or_refused_in_one_line(tmp_path_factory, rows, header):
    path = tmp_path_factory.getbasetemp() / "decisions.csv"
    path.write_text("\n".join([header, *(",".join(row) for row in rows)]), encoding="utf-8")
    try:
        count, refused = len(read_decisions(path)), None
    except SurveyError as error:
        count, refused = None, str(error)
    assert count == len(rows) if refused is None else "decisions.csv" in refused and "\n" not in refused
