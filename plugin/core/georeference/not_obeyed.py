"""What a file says of its heights and points that is told and not obeyed: a constant taken off its heights or added to
them, and points that it calls deleted or not to be used.
"""

from __future__ import annotations

import re
from typing import Any, FrozenSet, Iterator, List, Optional, Tuple

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..points.pointfile import PointFile
from ..points.said_above import HEIGHT_WORDS, pole_of_line
from ..points.vocabulary import each
from ..points.words import fold

CONSTANT = Text(
    "not_obeyed.constant",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: “{words}” may mean that a constant was taken off the heights or added to them; they are read as they "
        "stand. To change them give --shift-heights {line}:{metres} or --shift-heights {line}:-{metres}.",
    ),
    weight=3,
    metric=True,
)
DELETED = Text(
    "not_obeyed.deleted",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: column {column} calls {count} points deleted or not to be used, the first “{word}” in line {line}; "
        "they are used like the others. Give decisions on them, or take their lines out of the file.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "{file}: column {column} calls the point of line {line} deleted or not to be used, “{word}”; it is used like "
        "the others. Give a decision on it, or take its line out of the file.",
    ),
    weight=2,
)

_NUMBER = r"(?P<number>\d{2,5}(?:[.,]\d+)?)(?![\d.,]*\d)"
#: A constant behind the word of a height column, as in "H - 200" or "Z (+100 m)", but no year.
_IN_WORD = re.compile(rf"(?:^|[\s(\[]|(?<=^[hHzZ]))[+\u2212-]\s*(?!19[5-9]\d|20[0-4]\d){_NUMBER}")
_CHANGED = (
    r"reduced by|lowered by|raised by|shifted by|minus|less|plus|add|added|subtract|subtracted|deducted|offset|"
    r"vermindert um|reduziert um|erhoht um|abgezogen|abzuglich|zuzuglich|addiert|addieren|diminue\w* de|augmente\w* de|"
    r"ajoute\w*|retranche\w*|moins|restad\w+|sumad\w+|menos|mas|aumentad\w+|reducid\w+"
)
_VERB = re.compile(rf"(?<!\w)(?:{_CHANGED})(?!\w)")
#: A constant with its unit in a line; one with a sign.
_IN_LINE = re.compile(rf"(?<![\d.,]){_NUMBER}\s*(?:m|metres?|meters?|ft|feet)(?![a-z²³/])", re.IGNORECASE)
_SIGNED = re.compile(rf"(?<![\w/±+])[+\u2212]\s*{_NUMBER}|{_NUMBER.replace('number', 'before')}\s*m?\s*\+(?![/-])")
#: What says how good heights are, or of what else than heights a length is.
_OTHER = frozenset(
    each("""accuracy precision tolerance genauigkeit toleranz tolerancia tolerance rms hrms vrms sigma pole antenna
    antenne antena rod mask maske stab base basis interval radius distance geoid undulation separation error
    errors fehler erreur""")
)

_DELETED = frozenset(
    each("""deleted removed excluded discarded unused rejected geloscht geloescht entfernt verworfen
    ungultig supprime supprimee annule annulee exclu exclue ecarte eliminado eliminada borrado borrada anulado anulada
    excluido excluida cancellato eliminato usuniety verwijderd slettet raderad""")
)
#: Header words of columns that say whether a point counts, and of those that say that it does not.
_COUNTS = frozenset(
    each("""use used usable valid active enabled keep included gultig gueltig verwenden verwendet aktiv utilise utiliser
    valide actif usar usado valido activo""")
)
_NO = frozenset(each("0 no n false f nein falsch non faux falso"))
#: A column that says so has no more different values.
_MOST_VALUES = 100
_YES = frozenset(each("1 yes y true t ja j wahr oui vrai si s verdadero x"))


def told_beside(read: PointFile) -> Tuple[Message, ...]:
    """What to say of constants and of points called deleted."""
    return (*_constants(read), *_deleted(read))


def _constants(read: PointFile) -> Iterator[Message]:
    """The first constant that the header word of the heights or a line beside the points says."""
    found = next(
        filter(None, [*map(_of_word, _words_of(read, "height", "ellipsoidal_height")), *map(_of_line, read.above)]),
        None,
    )
    if found is None or not len(read.points):
        return
    words, number = found
    metres = number * read.format.height_unit.metres
    first = int(read.points.source_line[0])
    yield message(CONSTANT, file=read.points.source, words=words, line=first, metres=f"{metres:g}")


def _words_of(read: PointFile, *roles: str) -> List[str]:
    """The header words of the columns of ``roles``, where there are."""
    words = () if read.format.header is None else read.format.header.words
    columns = (read.format.columns.get(role, 0) for role in roles)
    return [words[column - 1] for column in columns if 0 < column <= len(words)]


def _of_word(word: str) -> Optional[Tuple[str, float]]:
    match = _IN_WORD.search(word)
    return None if match is None else (word, float(match["number"].replace(",", ".")))


def _of_line(line: str) -> Optional[Tuple[str, float]]:
    """A line of words on heights with a length, and a verb or a sign that says what became of them."""
    plain = fold(line)
    tokens = set(plain.split())
    if not tokens & HEIGHT_WORDS or tokens & _OTHER or pole_of_line(line) is not None or "±" in line:
        return None
    match = _IN_LINE.search(line) if _VERB.search(plain) else _SIGNED.search(line)
    if match is None:
        return None
    return line.strip()[:60], float(next(filter(None, match.groups())).replace(",", "."))


def _deleted(read: PointFile) -> Iterator[Message]:
    """Columns of a few different values that say so of some points, but not of all."""
    points = read.points
    codes = next(iter(_words_of(read, "code")), "code")  # a column of a few words may be taken for codes
    for name, column in [(codes, points.code), *points.extra.items()]:
        says, values = _says_deleted(name), [] if column is None else column.tolist()
        different = set(values) if says else set()
        odd = {value for value in different if _plain(value) in says} if len(different) <= _MOST_VALUES else set()
        at = [i for i, value in enumerate(values) if value in odd] if odd else []
        if 0 < len(at) < len(points):
            where = {"line": int(points.source_line[at[0]]), "word": _shown(values[at[0]]), "count": len(at)}
            yield message(DELETED, file=points.source, column=name, **where)


def _shown(value: Any) -> str:
    return f"{value:g}" if isinstance(value, float) else str(value)


def _plain(value: Any) -> str:
    return fold(_shown(value))


def _says_deleted(name: str) -> FrozenSet[str]:
    """The values of a column of this name that say that a point does not count."""
    tokens = set(fold(name).split())
    if tokens & _DELETED:
        return _YES
    return _NO | _DELETED if tokens & _COUNTS else _DELETED
