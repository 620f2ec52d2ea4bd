"""How the field writes codes, said on the command line: the same lines whichever way they are written."""

import pytest

from plugin.core.__main__ import main
from plugin.core.arguments.parser import make_parser
from plugin.core.arguments.settings import job_settings
from plugin.core.job import stages
from plugin.core.job.run import compute

HEADER = "name,easting,northing,height,code,nr,what"
#: Two breaklines, their points taken in turns: (east, north, height), number, first or last.
LINES = [((3, 5, 12.0), 1, "b"), ((3, 13, 8.0), 2, "b"), ((15, 5, 12.0), 1, "e"), ((15, 13, 8.0), 2, "e")]


def survey(path, written):
    """A level field with two lines across it; ``written``: columns code, nr and what of a point of a line."""
    rows = [f"p{i}-{j},{500000 + 2 * i},{5700000 + 2 * j},10,,," for i in range(10) for j in range(10)]
    for k, ((east, north, height), number, place) in enumerate(LINES):
        rows.append(f"k{k},{500000 + east},{5700000 + north},{height},{','.join(written(number, place))}")
    path.write_text("\n".join([HEADER, *rows]) + "\n", encoding="utf-8")
    return path


def job(tmp_path, written, *options):
    """All results, as the command line asks for them; nothing is written."""
    words = [survey(tmp_path / "survey.csv", written), "--crs", "EPSG:25832", "--interval", "0.5", "--out", tmp_path]
    return compute(job_settings(make_parser().parse_args([str(word) for word in (*words, "--no-check", *options)])))


def lines(tmp_path, written, *options):
    """The points of each line."""
    return [line.xyz.tolist() for line in job(tmp_path, written, *options).linework.constraints.lines]


def usual(number, place):
    return f"KT {number} {'BEGIN' if place == 'b' else 'END'}", "", ""


@pytest.mark.parametrize(
    ("written", "options"),
    [
        (lambda n, p: (f"{n}:KT {'BEGIN' if p == 'b' else 'END'}", "", ""),
         ("--code-pattern", "((?P<line>[0-9]+):)?(?P<code>[A-Z]+)")),
        (lambda n, p: ("KT", str(n), "BEGIN" if p == "b" else "END"), ("--line-column", "nr", "--word-column", "what")),
        (lambda n, p: (f"GR+KT{n} {'BEGIN' if p == 'b' else 'END'}", "", ""), ("--code-separator", "+")),
    ],
    ids=["pattern", "columns", "separator"],
)  # fmt: skip
def test_lines_are_the_same_whichever_way_they_are_written(tmp_path, written, options):
    expected = lines(tmp_path, usual)
    assert lines(tmp_path, written, *options) == expected
    assert lines(tmp_path, written) != expected


def test_words_of_the_field_are_known(tmp_path):
    def written(number, place):
        return f"KT {number} {'ANF' if place == 'b' else 'ZU'}", "", ""

    strange = job(tmp_path, written).linework
    assert [each.text.code for each in strange.messages].count("linework.strange_word") == 2
    known = job(tmp_path, written, "--code-words", "ANF,END,ZU,").linework
    assert not [each for each in known.messages if each.text.code == "linework.strange_word"]


def test_an_arc_keeps_to_its_tolerance(tmp_path):
    def written(number, place):
        return (f"KT 1 {'ARC' if number == 2 and place == 'b' else ''}" if number == 1 or place == "b" else ""), "", ""

    fine, coarse = (len(lines(tmp_path, written, "--arc-tolerance", each)[0]) for each in ("0.001", "0.5"))
    assert fine > 3 * coarse


def test_the_checks_read_codes_that_way_too(tmp_path, monkeypatch):
    asked = []
    monkeypatch.setattr(stages, "check_survey", lambda *_, convention, **__: asked.append(convention))
    words = [survey(tmp_path / "survey.csv", usual), "--crs", "local", "--interval", "1", "--out", tmp_path]
    compute(job_settings(make_parser().parse_args([str(word) for word in (*words, "--code-words", "A,B,C,D")])))
    assert [(each.begin, each.arc) for each in asked] == [("A", "D")]


@pytest.mark.parametrize(
    ("options", "said"),
    [
        (("--code-words", "B,E"), "must be four"),
        (("--code-words", "A,A,,"), "both begin and end"),
        (("--code-pattern", "("), "cannot be used"),
        (("--code-pattern", "[A-Z]+"), "no group named code"),
        (("--line-column", "nummer"), "no column nummer"),
        (("--arc-tolerance", "0"), "above zero"),
    ],
)
def test_a_convention_that_cannot_work_is_one_line(tmp_path, capsys, options, said):
    words = [survey(tmp_path / "survey.csv", usual), "--crs", "EPSG:25832", "--interval", "0.5", "--out", tmp_path]
    assert main([str(word) for word in (*words, "--no-check", *options)]) == 2
    assert said in capsys.readouterr().err.strip().splitlines()[-1]
