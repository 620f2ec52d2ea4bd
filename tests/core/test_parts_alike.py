"""Files whose heights count from another level further down, and headers within them whose words nobody knows."""

import numpy as np
import pytest

from plugin.core.georeference.intake import take_in
from plugin.core.georeference.intake_options import IntakeOptions
from plugin.core.messages import SurveyError
from plugin.core.points.geographic import HeightKind
from plugin.core.points.level_words import levels_of
from plugin.core.points.parts_alike import OTHER_LEVEL, UNKNOWN_HEADER
from plugin.core.points.questions import QuestionError
from plugin.core.points.survey import read_survey
from tests.core.file_shapes import N, columns_of, decimals, lines_of, site

HALF = N // 2
TRUTH = site(5)
COLUMNS = list(columns_of(TRUTH).values())
ROWS = lines_of(COLUMNS, ",").splitlines()
SWAPPED = lines_of([COLUMNS[i] for i in (0, 2, 1, 3, 4)], ",").splitlines()
RAISED = lines_of([*COLUMNS[:3], decimals(TRUTH.height + 46.0), COLUMNS[4]], ",").splitlines()


def two_parts(path, first, rows, second, others):
    path.write_text("\n".join([first, *rows[:HALF], second, *others[HALF:]]) + "\n", encoding="utf-8")
    return path


@pytest.mark.parametrize(
    ("first", "second"),
    [
        ("Pt,E,N,Height,Code", "Pt,E,N,Ellipsoidal height,Code"),
        ("Pt,E,N,H NHN,Code", "Pt,E,N,H ell,Code"),
        ("Pt,E,N,Z,Code", "Pt,E,N,h (ell),Code"),
        ("Pt,E,N,Alt. NGF,Code", "Pt,E,N,Hauteur ellipsoïdale,Code"),
        ("Pt,E,N,Height,Code", "# Heights: ellipsoidal"),
        ("Pt,E,N,Height,Code", "Heights above the ellipsoid from here"),
        ("Pt,E,N,Ellipsoidal height,Code", "Pt,E,N,Height,Code"),
        ("Punkt,Ost,Nord,Höhe DHHN92,Code", "Punkt,Ost,Nord,Höhe DHHN2016,Code"),
        ("Pt,E,N,H NAVD 88,Code", "Pt,E,N,H NGVD 29,Code"),
    ],
)
def test_heights_of_another_level_further_down_are_refused(tmp_path, first, second):
    with pytest.raises(SurveyError) as raised:
        read_survey(two_parts(tmp_path / "survey.csv", first, ROWS, second, RAISED))
    assert raised.value.message.text == OTHER_LEVEL
    assert "line 26" in str(raised.value)


@pytest.mark.parametrize("second", ["Pt,E,N,H NHN,Code", "# Heights: m", "Pt,E,N,Height (m),Code"])
def test_heights_of_the_same_level_are_read_on(tmp_path, second):
    read = read_survey(two_parts(tmp_path / "survey.csv", "Pt,E,N,H NHN,Code", ROWS, second, ROWS))
    assert np.allclose(read.points.height, TRUTH.height)


@pytest.mark.parametrize("second", ["Pkt,Hochachse,Querachse,Zett,Art", "Pt,Nordig,Ostig,Höh,Code", "# nr,ns,we,zz,aa"])
def test_a_header_that_nobody_knows_is_asked_about_and_the_answer_reads_the_same_columns(tmp_path, second):
    path = two_parts(tmp_path / "survey.csv", "Pt,E,N,Height,Code", ROWS, second, SWAPPED)
    with pytest.raises(QuestionError) as raised:
        read_survey(path)
    question = raised.value.questions[0]
    assert question.text.text == UNKNOWN_HEADER
    same = two_parts(path, "Pt,E,N,Height,Code", ROWS, second, ROWS)
    read = read_survey(same, columns=question.answers[0].value)
    assert np.allclose(read.points.northing, TRUTH.north)


@pytest.mark.parametrize("line", ["Kerb line,,,,", "Objekt,Weg,,,", "Pt,E,N,Height,Code", "-,m,m,m,-", "Remark, a, b"])
def test_other_lines_of_words_ask_nothing(tmp_path, line):
    read = read_survey(two_parts(tmp_path / "survey.csv", "Pt,E,N,Height,Code", ROWS, line, ROWS))
    assert len(read.points) == N


def test_two_files_of_which_one_says_ellipsoidal_are_asked_about(tmp_path):
    one, two = tmp_path / "one.csv", tmp_path / "two.csv"
    one.write_text("\n".join(["Pt,E,N,Height,Code", *ROWS[:HALF]]) + "\n")
    two.write_text("\n".join(["Pt,E,N,Ellipsoidal height,Code", *RAISED[HALF:]]) + "\n")
    with pytest.raises(QuestionError) as raised:
        take_in([one, two], IntakeOptions())
    assert [answer.value for answer in raised.value.questions[0].answers] == ["orthometric", "ellipsoidal"]
    assert len(take_in([one, two], IntakeOptions(heights_are=HeightKind.ELLIPSOIDAL)).survey.points) == N
    assert len(take_in([two], IntakeOptions()).survey.points) == N - HALF


def test_of_two_levels_in_cells_only_one_is_taken_off(tmp_path):
    path = tmp_path / "survey.csv"
    rows = [row.split(",") for row in ROWS]
    heights = [f"+{row[3]} NHN" if i < 40 else f"{row[3]} m ell." for i, row in enumerate(rows)]
    path.write_text("\n".join(["Pt;E;N;H", *(";".join([*row[:3], up]) for row, up in zip(rows, heights))]) + "\n")
    read = read_survey(path)
    assert len(read.points) == 40
    assert np.allclose(read.points.height, TRUTH.height[:40])
    assert len(read.rejects) == N - 40


def test_words_of_levels():
    assert levels_of("Höhe ü. NHN") == {"nhn"}
    assert levels_of("H NAVD 88") == {"navd88"}
    assert levels_of("ellipsoidal height") == {"ellipsoid"}
    assert levels_of("Height") == frozenset()
