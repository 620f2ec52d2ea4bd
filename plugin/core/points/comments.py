"""Which lines of a file are comments."""

from __future__ import annotations

import re
from typing import FrozenSet, Iterator, List, NamedTuple, Optional, Tuple

from .number_marks import is_number
from .said_units import said_by
from .source import TextSource
from .vocabulary import each
from .words import Word, fold

#: A comment in use among other files stands above the data.
_ABOVE = 20
_LOOKED_AT = 300
OTHER_COMMENTS = ("//", "%", "!", "--")


class CommentSign(NamedTuple):
    """``mark``: what starts a comment line, "" for nothing; ``points``: how many of the first such lines hold numbers
    as points do; ``names``: how many of these without a blank behind the sign, so that it may begin their names.
    """

    mark: str
    points: int = 0
    names: int = 0


def find_comment(source: TextSource, given: Optional[str]) -> CommentSign:
    """What starts a comment line.

    ``given``: "auto" to find out, "none" for no comments. It is # unless no line among the first starts with it and
    some above the data start with another usual sign. Where most lines with numbers start with #, that begins names.
    """
    if given != "auto":
        return CommentSign("" if given == "none" else given or "")
    lines: List[str] = []
    for _, text in source.each_line():
        if text.strip():
            lines.append(text.strip())
        if len(lines) >= _LOOKED_AT:
            break
    if not any(line.startswith("#") for line in lines[:_ABOVE]):
        above = lines[:_ABOVE]
        for mark in OTHER_COMMENTS:
            count = next((i for i, line in enumerate(above) if not line.startswith(mark)), len(above))
            if 0 < count < len(above) and not any(_like_a_point(line) for line in above[:count]):
                return CommentSign(mark)
    points = [line for line in lines if _like_a_point(line)]
    signed = [line for line in points if line.startswith("#")]
    if len(signed) * 2 > len(points):
        return CommentSign("" if any(line.startswith("# ") for line in signed) else "# ")
    return CommentSign("#", len(signed), sum(re.match("#[^#\\s]", line) is not None for line in signed))


def _lines_above(source: TextSource, mark: str, header: int, first: int) -> Iterator[str]:
    """Comments among the first lines, and what else stands above the data but the header; arguments as of
    :func:`units_said`."""
    seen = 0
    for number, text in source.each_line():
        seen += bool(text.strip())
        if seen > _ABOVE:
            return
        comment = bool(mark) and text.strip().startswith(mark)
        if number != header and (comment or number < first):
            yield text


def units_said(source: TextSource, mark: str, header: int, first: int) -> Tuple[Word, Word]:
    """The units of coordinates and of heights that comments and other lines above the data say, as header words would.

    ``header``: the line of the header, 0 for none; ``first``: the first line of data.
    """
    plan, heights = Word(), Word()
    for text in _lines_above(source, mark, header, first):
        said = units_of_line(text)
        plan = said[0] if said[0].unit is not None else plan
        heights = said[1] if said[1].unit is not None else heights
    return plan, heights


def heights_ellipsoidal(source: TextSource, mark: str, header: int, first: int) -> bool:
    """Whether comments and other lines above the data say that heights are above the ellipsoid, and nothing else."""
    said = False
    for text in _lines_above(source, mark, header, first):
        tokens = set(fold(text).split())
        if _HEIGHTS & tokens and any(re.match("ell?ips", token) for token in tokens):
            said = not tokens & _OTHER_LEVELS
    return said


_OTHER_LEVELS = frozenset(
    each("""not no geoid orthometric ortho msl nhn nn navd88 evrf ngf converted undulation separation normal
    gebrauchshohen orthometrisch orthometrique ortometrica""")
)


def units_of_line(text: str) -> Tuple[Word, Word]:
    """The units of coordinates and of heights that one line says."""
    tokens = fold(text).split()
    plan, heights = _unit_after(tokens, _COORDINATES), _unit_after(tokens, _HEIGHTS)
    return plan, heights if heights.unit is not None else plan


_COORDINATES = frozenset(
    each("""unit units einheit einheiten unite unites unidad unidades coordinates coordinate koordinaten coordonnees
    coordenadas coordinate lengths length langen laengen longueurs dimensions masse measurements distances survey
    jednotka jednotky enhet eenheid unita unidade""")
)
_HEIGHTS = frozenset(
    each("""height heights elevation elevations hohe hohen hoehe hoehen altitude altitudes cota cotas levels level z h
    hauteur hauteurs quota quote altura alturas elev elevacion elevaciones hoogte hoogten hojd hojder hoyde hoyder kote
    vyska vysky wysokosc wysokosci korkeus korkeudet rl""")
)
_BETWEEN = frozenset(
    each("""in are is as of the all lengths length und and unit units einheit en sont son sind est ist given measured
    values stated shown de des der""")
)


def _unit_after(tokens: List[str], heads: FrozenSet[str]) -> Word:
    """The unit right behind one of ``heads``, but for words that say nothing."""
    for at in (i for i, token in enumerate(tokens) if token in heads):
        rest = tokens[at + 1 :]
        while rest and rest[0] in _BETWEEN:
            rest = rest[1:]
        for count in (3, 2, 1):
            said = said_by(rest[:count])
            if said.unit is not None and len(rest) >= count:
                return Word(unit=said.unit, vague=said.vague)
    return Word()


def _like_a_point(line: str) -> bool:
    """Whether a line holds three numbers."""
    for sign in "\t;,| ":
        fields = [field.strip() for field in (line.split() if sign == " " else line.split(sign))[:50]]
        if sum(is_number(field.lstrip("# ") if i == 0 else field) for i, field in enumerate(fields)) >= 3:
            return True
    return bool(re.fullmatch(r"#?\s*[\d.,;\s]+", line)) and len(line.split()) >= 3
