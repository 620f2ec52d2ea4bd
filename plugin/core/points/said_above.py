"""What comments and titles above and below the data of a file say of it: units, what heights are of, the pole."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Iterator, List, NamedTuple, Optional, Sequence, Tuple

from ..units import LengthUnit
from .below import lines_below
from .pole_words import pole_said
from .said_units import said_by
from .source import TextSource
from .vocabulary import each
from .words import DEPTH, Word, fold

#: So many lines that are not blank are looked at.
_ABOVE = 20


class Units(NamedTuple):
    """The units that a line says: of ``all`` lengths, of the ``plan`` and of ``heights`` alone."""

    all: Word = Word()
    plan: Word = Word()
    heights: Word = Word()


@dataclass(frozen=True)
class Above:
    """What stands above the data. ``lines``: all but the header. ``plan``, ``heights``: their units; ``ellipsoidal``:
    whether heights are above the ellipsoid, and nothing else; ``of``: "antenna", "ground", "depth" or "", what heights
    are said to be of; ``poles``: different pole heights, metres; ``rivals``: units of the plan and of heights that
    lines above and lines below say otherwise.
    """

    lines: Tuple[str, ...] = ()
    plan: Word = field(default_factory=Word)
    heights: Word = field(default_factory=Word)
    ellipsoidal: bool = False
    of: str = ""
    poles: Tuple[float, ...] = ()
    rivals: Tuple[Tuple[LengthUnit, ...], Tuple[LengthUnit, ...]] = ((), ())


def said_above(source: TextSource, mark: str, header: int, first: int) -> Above:
    """What comments and other lines above the data say, but the header.

    ``mark``: what begins comments; ``header``: the line of the header, 0 for none; ``first``: the first line of data.
    """
    above = (*source.said, *_lines_above(source, mark, header, first))
    own = (line.text for line in lines_below(source, mark) if line.number > max(first, header))
    below = (*source.below, *own)
    lines = tuple(dict.fromkeys((*above, *below)))
    ellipsoidal, of = False, ""
    for line in lines:
        tokens = set(fold(line).split())
        if HEIGHT_WORDS & tokens and any(re.match("ell?ips", token) for token in tokens):
            ellipsoidal = not tokens & _OTHER_LEVELS
        of = of if of == "depth" else heights_of_line(line) or of
    found = [pole_of_line(line) for line in lines]
    poles = dict.fromkeys(pole for pole in found if pole is not None)
    if poles and of == "antenna" and any(_IN_DOUBT.search(fold(line)) for line in lines):
        of = ""
    plan, heights = _units_of(above)
    plan_below, heights_below = _units_of(below)
    rivals = (_rivals(plan, plan_below), _rivals(heights, heights_below))
    plan = plan if plan_below.unit is None else plan_below
    heights = heights if heights_below.unit is None else heights_below
    return Above(lines, plan, heights, ellipsoidal, of, tuple(poles), rivals)


def _units_of(lines: Sequence[str]) -> Tuple[Word, Word]:
    """The units of the plan and of heights that lines say, the later ones first."""
    every, plan, heights = Word(), Word(), Word()
    for line in lines:
        said = units_of_line(line)
        every, plan, heights = (new if new.unit is not None else old for new, old in zip(said, (every, plan, heights)))
    return plan if plan.unit is not None else every, heights if heights.unit is not None else every


def _rivals(above: Word, below: Word) -> Tuple[LengthUnit, ...]:
    """Both units where they differ, but a foot of which nobody says which it is."""
    if above.unit is None or below.unit is None or above.unit is below.unit:
        return ()
    alike = (above.vague or below.vague) and {above.unit, below.unit} <= {LengthUnit.FOOT, LengthUnit.US_SURVEY_FOOT}
    return () if alike else (above.unit, below.unit)


def pole_of_line(text: str) -> Optional[float]:
    """Metres of the pole that a line states, but not of a base; None where it states none."""
    return None if _OF_A_BASE & set(fold(text).split()) else pole_said(text)


def _lines_above(source: TextSource, mark: str, header: int, first: int) -> Iterator[str]:
    """Comments among the first lines, and what else stands above the data."""
    seen = 0
    for number, text in source.each_line():
        seen += bool(text.strip())
        if seen > _ABOVE:
            return
        comment = bool(mark) and text.strip().startswith(mark)
        if number != header and (comment or number < first) and text.strip():
            yield text


_OTHER_LEVELS = frozenset(
    each("""not no geoid orthometric ortho msl nhn nn navd88 evrf ngf converted undulation separation normal
    gebrauchshohen orthometrisch orthometrique ortometrica""")
)
_OF_A_BASE = frozenset(each("base basis bases reference referenz referenzstation basisstation estacion"))
_ALL = frozenset(
    each("""unit units einheit einheiten unite unites unidad unidades coordinates coordinate koordinaten coordonnees
    coordenadas coordinate lengths length langen laengen longueurs dimensions masse measurements distances distance
    survey jednotka jednotky enhet eenheid unita unidade linear""")
)
HEIGHT_WORDS = frozenset(
    each("""height heights elevation elevations hohe hohen hoehe hoehen altitude altitudes cota cotas levels level z h
    hauteur hauteurs quota quote altura alturas elev elevacion elevaciones hoogte hoogten hojd hojder hoyde hoyder kote
    vyska vysky wysokosc wysokosci korkeus korkeudet rl""")
)
_UPWARD = HEIGHT_WORDS | frozenset(each("vertical verticale verticales verticals vertikal vertically"))
_FLAT = frozenset(
    each("""horizontal horizontale horizontales horizontally plan planimetry planimetric planimetrie planimetria
    planimetrique lage eastings northings easting northing xy en position positions rechtswert hochwert""")
) - {"en"}
_BETWEEN = frozenset(
    each("""in are is as of the all lengths length und and unit units einheit einheiten en sont son sind est ist given
    measured values stated shown de des der both""")
)


@lru_cache(maxsize=4096)  # a file may have few lines of words, or the same one very often
def units_of_line(text: str) -> Units:
    """The units that one line says, such as "Horizontal units: metres, vertical units: feet"."""
    found = Units()
    plain = re.sub(r"[()\[\]{}]", " ", text)
    for clause in re.split(r"[;,|\t]", plain):
        found = _units_of_clause(fold(clause).split(), found)
    if found == Units():  # a row with one unit, such as "Units,,,ft"
        cells = [fold(cell).split() for cell in re.split(r"[;,|\t]", plain) if cell.strip()]
        if len(cells) == 2 and _unit(cells[1]).unit is not None:
            found = _units_of_clause([*cells[0], *cells[1]], found)
    return found


def _units_of_clause(tokens: List[str], found: Units) -> Units:
    """``found`` with the units behind a word for lengths, or before one at the start; the words since the unit before
    say of what, else the one right behind.
    """
    since = at = 0
    while at < len(tokens):
        size = next((n for n in (3, 2, 1) if at + n <= len(tokens) and _unit(tokens[at : at + n]).unit), 0)
        if not size:
            at += 1
            continue
        word = _unit(tokens[at : at + size])
        of = _axis(tokens[since:at][::-1])
        behind = _axis([token for token in tokens[at + size :] if token not in _BETWEEN][:1])
        headed = _headed(tokens[since:at]) or (at == since == 0 and bool(behind))
        if headed:
            apart = tokens[at + size + 1 : at + size + 2]
            of = of or (behind if not apart or _unit(apart).unit is None else "")
            found = found._replace(**{of or "all": word})
        at = since = at + size
    return found


def _unit(tokens: List[str]) -> Word:
    said = said_by(tokens)
    return Word(unit=said.unit, vague=said.vague)


def _axis(tokens: List[str]) -> str:
    """Whether the first word that says so means the plan or heights."""
    for token in tokens:
        if token in _UPWARD:
            return "heights"
        if token in _FLAT:
            return "plan"
    return ""


def _headed(before: List[str]) -> bool:
    """Whether a word for lengths stands right before a unit, but for words that say nothing."""
    for token in reversed(before):
        if token in _ALL or token in _UPWARD or token in _FLAT:
            return True
        if token not in _BETWEEN:
            return False
    return False


_OF_ANTENNA = r"antenn?[ae]n?|apc|arp|phase cent\w+|phasenzentrum|centre de phase|centro de fase"
_OF_GROUND = r"ground|terrain|gelande|gelaende|boden|bodenpunkt\w*|terreno|suelo|sol|pole tip|reduced|mark"
#: Words that the pole was taken off, or not: only the user knows which heights are meant.
_IN_DOUBT = re.compile(
    r"(?<!\w)(?:appli|subtract|deduct|dedui|deduz|deduc|restad|abgezogen|korrigiert|correct|corrig|afgetrokken|odj"
    r"|odecten|sottratt|subtra|descont|removed|already|deja|bereits|reduc|reduz|uwzgl)\w*"
)
_HEIGHT_OF = re.compile(
    r"(?<!\w)(?:" + "|".join(sorted(_UPWARD - {"h", "z"}, key=len, reverse=True)) + r")(?: [^\W\d]+){0,4}? "
    rf"(?:(?P<antenna>{_OF_ANTENNA})|(?P<ground>{_OF_GROUND}))(?!\w)"
)
_OF_A_POLE = re.compile(r"(?:pole|rod|antenna|antenne|antena|ant|instrument|target|canne|jalon|baston)s?$")


#: What a vertical axis may point down by, and what says that it points up.
_DOWN = (
    r"down|downwards?|nach unten|abwarts|vers le bas|hacia abajo|abajo|verso il basso|para baixo|naar beneden|omlaag"
    r"|w dol|dolu|nedat|nedad|nedover|alaspain"
)
_UP = r"up|upwards?|nach oben|aufwarts|vers le haut|hacia arriba|verso l alto|para cima|naar boven|uppat"
_SENSE = "|".join(
    sorted(
        (_UPWARD - {"level", "levels"})
        | set(each("""axis axes achse axe eje asse eixo as os positive positiv positif positiva positivo positives
        positief dodatnie counted gezahlt values werte sign convention""")),
        key=len, reverse=True,
    )
)  # fmt: skip
_COUNTS = {
    where: re.compile(
        rf"(?<!\w)(?:{_SENSE})(?: \w+){{0,3}}? (?:{way})(?!\w)|(?<!\w)(?:{way})(?: \w+){{0,2}}? (?:{_SENSE})(?!\w)"
    )
    for where, way in (("down", _DOWN), ("up", _UP))
}
_DEPTHS = DEPTH | frozenset(each("sounding soundings"))
_NO_DEPTHS = frozenset(each("bit color colour pixel not no nicht keine pas non"))


def _counts_down(plain: str) -> bool:
    """Whether a folded line says that what is headed as heights counts down."""
    if _COUNTS["up"].search(plain):
        return False
    tokens = plain.split()
    return bool(_COUNTS["down"].search(plain)) or (bool(_DEPTHS & set(tokens)) and not _NO_DEPTHS & set(tokens))


def heights_of_line(text: str) -> str:
    """ "antenna" or "ground" where a line such as "Heights: antenna phase centre" says so, "depth" where one says that
    they count down, else "".
    """
    plain = fold(text)
    if _counts_down(plain):
        return "depth"
    for match in _HEIGHT_OF.finditer(plain):
        its_own = re.match(r" \d", plain[match.end() :])  # how high the antenna stood
        if not its_own and not _OF_A_POLE.search(plain[: match.start()].strip()):
            ground = match["ground"] or re.search(rf"(?<!\w)(?:not|reduced|{_OF_GROUND})(?!\w)", match[0])
            return "ground" if ground else "antenna"
    return ""
