"""What a file says itself of its CRS, in lines beside its points, its header or a column, against the one chosen."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any, Callable, Iterator, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np
from pyproj import CRS
from pyproj.database import query_crs_info
from pyproj.enums import PJType
from pyproj.exceptions import CRSError

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..points.landing import Landing
from ..points.pointfile import PointFile
from ..points.questions import Answer, Question, QuestionError, Topic
from ..points.vocabulary import each
from ..points.words import fold
from .axes import flat, same_plan
from .intake_options import IntakeOptions
from .neighbours import area_box, family, stem_of, zone_number
from .record import crs_name

SAID = Text(
    "crs_doubt.said",
    QT_TRANSLATE_NOOP(
        "core", "The CRS is doubtful: {file} itself says “{words}”, and {crs} was chosen. Check which of them it is."
    ),
    weight=3,
)
WHICH_CRS = Text("crs_said.which", QT_TRANSLATE_NOOP("core", "the file itself says “{words}”, and {crs} was chosen"))
WHICH_BEHIND = Text(
    "crs_said.behind",
    QT_TRANSLATE_NOOP(
        "core",
        "line {line}, behind the first points, says “{words}”, and {crs} was chosen; where that is so only from there "
        "on, save its parts as files of their own",
    ),
)
IN_ITS_OWN = Text("crs_said.own", QT_TRANSLATE_NOOP("core", "its coordinates are in {crs}, as it says"))
IN_ANOTHER = Text(
    "crs_said.another", QT_TRANSLATE_NOOP("core", "its coordinates are in another CRS; its code in place of this one")
)
AS_CHOSEN = Text("crs_said.chosen", QT_TRANSLATE_NOOP("core", "its coordinates are in {crs}, whatever it says"))

_ZONE = re.compile(
    r"(?<![A-Za-z])(?:UTM|GK|MGA|zone|fuseau|Streifen|huso)[ _/:=-]*(?:zone[ _:=-]*)?"
    r"(\d{1,2})(?!\d) ?[A-Z]?(?![A-Za-z])",
    re.IGNORECASE,
)
_EPSG = re.compile(r"\b(?:EPSG|SRID)\s*[:=]{0,2}\s*(\d{4,6})\b", re.IGNORECASE)
#: A number in a header word that may be the code of a CRS, but no year.
_IN_WORD = re.compile(r"(?<!\d)(?!19[5-9]\d(?!\d)|20[0-4]\d(?!\d))(\d{4,6})(?!\d)")
_MERIDIAN = re.compile(
    r"(?:central meridian|mittelmeridian|hauptmeridian|m[ée]ridien central|meridiano central(?:e)?)\W{0,4}"
    r"(\d{1,3}(?:\.\d+)?)\s*°?\s*([EWO])?(?![A-Za-z\d])",
    re.IGNORECASE,
)
#: Columns that name a zone or a CRS.
_ZONES = frozenset(each("zone utmzone gridzone fuseau huso streifen zona zonenr"))
_SYSTEMS = frozenset(each("crs epsg srs srid datum system projection projektion coordsys koordinatensystem"))
#: So many values of such a column are looked at.
_LOOKED_AT, _MOST_ANSWERS = 1000, 3

#: Datums that files name, whose coordinates lie elsewhere than those of another; those that differ by less than a
#: metre or two are not among them.
_DATUMS = re.compile(
    r"(?<![A-Za-z])(NAD[ -]?27|ED[ -]?50|DHDN|Pulkovo(?:[ -]?19)?[ -]?(?:42|95)|OSGB[ -]?36|SAD[ -]?69"
    r"|Arc[ -]?(?:1950|1960)|AGD[ -]?(?:66|84)|NZGD[ -]?49|Cape Datum"
    r"|S-?JTSK|Corrego Alegre|PSAD[ -]?56|Tokyo Datum)(?![A-Za-z0-9])",
    re.IGNORECASE,
)
_DATUM_WORDS = {
    "dhdn": ("dhdn", "hauptdreiecksnetz"), "osgb36": ("osgb", "ordnancesurvey"), "sjtsk": ("jtsk", "jednotne"),
    "nzgd49": ("nzgd49", "nzgd1949", "geodeticdatum1949"), "sad69": ("sad69", "southamericandatum1969", "sad1969"),
    "psad56": ("psad56", "provisionalsouthamericandatum1956"), "ed50": ("ed50", "europeandatum1950"),
    "nad27": ("nad27", "northamericandatum1927"), "pulkovo42": ("pulkovo194", "pulkovo42"),
    "pulkovo95": ("pulkovo1995", "pulkovo95"), "pulkovo1942": ("pulkovo194",), "pulkovo1995": ("pulkovo1995",),
    "agd66": ("agd66", "australiangeodeticdatum1966"), "agd84": ("agd84", "australiangeodeticdatum1984"),
    "capedatum": ("cape",), "tokyodatum": ("tokyo",),
}  # fmt: skip


class Said(NamedTuple):
    """``words`` of a file that name another CRS than the one chosen, and those it may be."""

    words: str
    others: Tuple[Any, ...] = ()


def ask_which_crs(read: PointFile, options: IntakeOptions) -> Optional[QuestionError]:
    """The question whether the plan coordinates of a file are in the CRS chosen though it says another; None where it
    does not, where the user has said so, or where the one chosen has no code to answer with.
    """
    crs = options.crs
    settled = read.geographic is not None or options.source_crs is not None or options.correct
    chosen = None if crs is None or settled else _code(crs)
    if chosen is None:
        return None
    plan = (read.points.easting, read.points.northing)
    said, line = conflict(lines_of(read), crs, plan), 0
    for one in read.behind:
        if said is None:
            said, line = conflict([one.text], crs, plan), one.number
    if said is None:
        return None
    answers = [
        Answer("--source-crs", code, message(IN_ITS_OWN, crs=crs_name(other)))
        for other in said.others
        for code in [_code(other)]
        if code is not None
    ]
    if not answers:
        answers.append(Answer("--source-crs", chosen, message(IN_ANOTHER), fill_in=True))
    answers.append(Answer("--source-crs", chosen, message(AS_CHOSEN, crs=crs_name(crs))))
    where = {"words": said.words, "crs": crs_name(crs)}
    text = message(WHICH_BEHIND, line=line, **where) if line else message(WHICH_CRS, **where)
    return QuestionError(read.points.source, [Question(Topic.CRS, text, tuple(answers))])


def said_in_file(read: PointFile, crs: Optional[Any]) -> Tuple[Message, ...]:
    """What to say where a file names another CRS than ``crs``."""
    return said_in_lines(Path(read.points.source).name, lines_of(read), crs)


def said_in_lines(file: str, lines: Sequence[str], crs: Optional[Any]) -> Tuple[Message, ...]:
    """The same of the lines of any file."""
    said = None if crs is None else conflict(lines, crs)
    return () if said is None else (message(SAID, file=file, words=said.words, crs=crs_name(crs)),)


def lines_of(read: PointFile) -> List[str]:
    """What may name a CRS in a file: lines beside its points, its header words, columns of zones or systems."""
    words = () if read.format.header is None else read.format.header.words
    columns = ((name, values[:_LOOKED_AT].tolist()) for name, values in read.points.extra.items())
    return [*read.above, *words, *_codes_of_header(words), *lines_of_columns(columns)]


def _codes_of_header(words: Sequence[str]) -> List[str]:
    """The codes that stand in two header words or more, such as E_25833 and N_25833."""
    codes = [match[1] for word in words for match in _IN_WORD.finditer(word)]
    return [f"EPSG:{code}" for code in dict.fromkeys(codes) if codes.count(code) > 1]


def lines_of_columns(columns: Iterator[Tuple[str, List[Any]]]) -> Iterator[str]:
    """What columns of zones or systems say, each value once; a name and values each."""
    for name, values in columns:
        tokens = set(fold(name).split())
        if tokens & (_ZONES | _SYSTEMS):
            for value in dict.fromkeys(str(one).strip() for one in values):
                number = re.fullmatch(r"(\d{1,2})(?:\.0)?\s*([A-Z]?)", value)
                if tokens & _ZONES and number is not None:
                    yield f"zone {number[1]}{number[2]}"
                elif tokens & _SYSTEMS:
                    yield f"EPSG:{value}" if re.fullmatch(r"\d{4,6}", value) else value


def conflict(lines: Sequence[str], crs: Any, plan: Optional[Tuple[np.ndarray, np.ndarray]] = None) -> Optional[Said]:
    """What lines say against ``crs``; None where they say nothing of the kind, or name it too. ``plan``: eastings and
    northings (n,), metres, to tell which CRS of a datum they may be in."""
    for tell in (_epsg, _zones, _meridians):
        found = list(tell(lines, crs))
        if found and None not in found:
            return found[0]
    return _datum(lines, crs, plan)


def _epsg(lines: Sequence[str], crs: Any) -> Iterator[Optional[Said]]:
    """What each code of a projected CRS says; None where it is ``crs``."""
    for match in (match for line in lines for match in _EPSG.finditer(line)):
        try:
            other = CRS.from_epsg(int(match[1]))
        except CRSError:
            continue
        if other.is_projected:
            yield None if same_plan(flat(other), flat(crs)) else Said(match[0], (other,))


def _zones(lines: Sequence[str], crs: Any) -> Iterator[Optional[Said]]:
    own = zone_number(crs.name)
    for match in (match for line in lines for match in _ZONE.finditer(line)):
        number, utm = int(match[1]), match[0].lower().startswith("utm")
        if not 1 <= number <= 60 or (own is None and not utm):
            continue
        yield None if number == own else Said(match[0], _of_family(crs, lambda one: zone_number(one.name), number))


def _meridians(lines: Sequence[str], crs: Any) -> Iterator[Optional[Said]]:
    own = _meridian(flat(crs))
    for match in (match for line in lines for match in _MERIDIAN.finditer(line)):
        degrees = float(match[1]) * (-1.0 if (match[2] or "").upper() == "W" else 1.0)
        if own is None:
            continue
        alike = abs(degrees - own) < 0.01
        yield None if alike else Said(match[0].strip(), _of_family(crs, _meridian, degrees))


def _meridian(crs: Any) -> Optional[float]:
    """Degrees of the meridian that a projection has in its middle, None for none."""
    operation = crs.coordinate_operation
    for parameter in operation.params if operation is not None else ():
        if parameter.name.lower().startswith(("longitude of natural origin", "longitude of false origin")):
            return float(parameter.value * np.degrees(parameter.unit_conversion_factor))
    return None


def _of_family(crs: Any, number: Callable[[Any], Optional[float]], wanted: float) -> Tuple[Any, ...]:
    """The CRS of the same family whose ``number`` is the one wanted, of the same kind of name where there is one."""
    box = area_box(flat(crs))
    if box is None or flat(crs).coordinate_operation is None:
        return ()
    numbered = ((number(one), one) for one in family(flat(crs), box))
    found = [one for its, one in numbered if its is not None and abs(its - wanted) < 0.01]
    return tuple(sorted(found, key=lambda one: stem_of(one.name) != stem_of(flat(crs).name)))[:1]


def _datum(lines: Sequence[str], crs: Any, plan: Optional[Tuple[np.ndarray, np.ndarray]]) -> Optional[Said]:
    datum = flat(crs).geodetic_crs.datum
    own = _plain(f"{crs.name} {datum.name if datum else ''}")
    found = [match[1] for line in lines for match in _DATUMS.finditer(line)]
    other = [
        words
        for words in found
        if not any(re.search(one, own) for one in _DATUM_WORDS.get(_plain(words), (_plain(words),)))
    ]
    if not other or len(other) < len(found):
        return None
    return Said(other[0], tuple(_on_datum(other[0], plan)))


def _on_datum(words: str, plan: Optional[Tuple[np.ndarray, np.ndarray]]) -> List[Any]:
    """CRSs on a datum in whose areas of use coordinates lie."""
    if plan is None:
        return []
    good = np.isfinite(plan[0]) & np.isfinite(plan[1])
    found: List[Any] = []
    for info in query_crs_info(auth_name="EPSG", pj_types=PJType.PROJECTED_CRS):
        if len(found) < _MOST_ANSWERS and _plain(info.name.split(" / ")[0]) == _plain(words):
            other = CRS.from_authority(info.auth_name, info.code)
            if good.any() and Landing(other).of_plan(plan[0][good], plan[1][good])[0]:
                found.append(other)
    return found


def _plain(name: str) -> str:
    return re.sub(r"\W", "", name).lower()


def _code(crs: Any) -> Optional[str]:
    code = flat(crs).to_authority(min_confidence=90)
    return None if code is None else ":".join(code)
