"""Map tips: what QGIS shows of a feature under the mouse (View > Show Map Tips)."""

from __future__ import annotations

import re
from typing import Mapping, Tuple

from qgis.PyQt.QtCore import QCoreApplication

from ..core.messages import QT_TRANSLATE_NOOP
from ..core.report.found_words import KIND_NAMES
from ..core.report.remarks import REASONS
from .localnumbers import units_told

translate = QCoreApplication.translate

STATUSES = {
    "used": QT_TRANSLATE_NOOP("hummock", "Used"),
    "flagged": QT_TRANSLATE_NOOP("hummock", "Flagged"),
    "rejected": QT_TRANSLATE_NOOP("hummock", "Rejected (not in the surface)"),
}

LINE_STATUSES = {
    "used": QT_TRANSLATE_NOOP("hummock", "Used"),
    "proposed": QT_TRANSLATE_NOOP("hummock", "Proposed (not in the surface)"),
    "rejected": QT_TRANSLATE_NOOP("hummock", "Rejected (not in the surface)"),
}


_NAME_FIELD, _TEXT_FIELD = '"name"', '"text"'


def escaped(expression: str) -> str:
    """A QGIS expression for the text of another as HTML shows it, whatever signs a survey has in it."""
    for sign, shown in (("&", "&amp;"), ("<", "&lt;"), (">", "&gt;")):
        expression = f"replace({expression}, '{sign}', '{shown}')"
    return expression


def point_tip() -> str:
    """HTML for a survey point: status, every reason in words, what the checks said, name, code and line."""
    reasons = {str(reason.name).lower(): translate("core", text) for reason, text in REASONS.items()}
    statuses = {word: translate("hummock", text) for word, text in STATUSES.items()}
    said = "attribute($currentfeature, 'check_status')"
    by_hand = _quoted(translate("hummock", "By hand; the checks said:"))
    lines = [
        f"'<b>' || {_word_of(statuses, _STATUS)} || '</b>'",
        _words_of(reasons, _REASON),
        f"if({said} <> {_STATUS}, concat({by_hand}, ' ', {_word_of(statuses, said)}, ' ', "
        f"{_words_of(reasons, _CHECKED)}), '')",
        escaped(f"trim(concat({_NAME}, ' ', {_CODE}))"),
        f"concat({_quoted(translate('hummock', 'Line of the file'))}, ' ', {_LINE})",
    ]
    return f"[% array_to_string(array_filter(array({', '.join(lines)}), @element <> ''), '<br>') %]"


def finding_tip() -> str:
    """HTML for what a check found: the status it gives, and the finding in words."""
    statuses = {word: translate("hummock", text) for word, text in STATUSES.items()}
    return f"<b>[% {_word_of(statuses, _STATUS)} %]</b><br>[% {escaped(_TEXT_FIELD)} %]"


def found_line_tip() -> str:
    """HTML for a line that the points show: status, number and kind, and what tells of it."""
    statuses = {word: translate("hummock", text) for word, text in LINE_STATUSES.items()}
    kinds = {kind.value: translate("core", text) for kind, text in KIND_NAMES.items()}
    kind = _word_of(kinds, '"kind"')
    text = _lengths(translate("hummock", "{passes} passes, evidence {evidence}, {length} m"), length=("length_m", 1))
    told = text.format(passes='[% "passes" %]', evidence='[% round("evidence", 1) %]')
    return f'<b>[% {_word_of(statuses, _STATUS)} %]</b><br>[% "number" %] [% {kind} %]<br>{told}'


def circle_tip() -> str:
    """HTML for a circle without a measured point."""
    text = translate("hummock", "<b>Circle {rank}</b><br>Nothing was measured within {radius} m of its middle.")
    return _lengths(text, radius=("radius_m", 2)).format(rank='[% "rank" %]')


def long_triangle_tip() -> str:
    """HTML for a triangle with a long edge."""
    text = translate("hummock", "Triangle with an edge of {longest} m, {area} m²: straight over ground nobody walked.")
    return _lengths(text, longest=("longest_m", 1), area=("area_m2", 1))


def place_tip() -> str:
    """HTML for a place to walk again."""
    text = translate("hummock", "<b>{name}</b><br>Walk here again: nothing was measured within {radius} m.")
    return _lengths(text, radius=("radius_m", 1)).format(name=f"[% {escaped(_NAME_FIELD)} %]")


def check_point_tip() -> str:
    """HTML for a check point: its name, its cover, and how far the surface is above or below it."""
    groups = {word: translate("core", word) for word in ("non-vegetated", "vegetated")}
    said = [
        translate("hummock", "The surface lies {off} mm above the check point."),
        translate("hummock", "The surface lies {off} mm below the check point."),
        translate("hummock", "Outside the surface"),
    ]
    factor, symbol, decimals = units_told().instead_of("mm", height=True)
    off = f'format_number(abs({1000 * factor!r} * "off_m"), {decimals})'
    told = (text.replace("{off} mm", f"{{off}} {symbol}") for text in said[:2])
    above, below = (f"replace({_quoted(text)}, '{{off}}', {off})" for text in told)
    where = f'CASE WHEN "off_m" IS NULL THEN {_quoted(said[2])} WHEN "off_m" < 0 THEN {below} ELSE {above} END'
    group = _word_of(groups, "attribute($currentfeature, 'group')")
    return f"<b>[% {escaped(_NAME_FIELD)} %]</b> ([% {group} %])<br>[% {where} %]"


def walk_tip() -> str:
    """HTML for a line to walk: its place in the order, what it is walked for, name and length."""
    uses = {
        "perimeter": translate("hummock", "Perimeter"),
        "pass": translate("hummock", "Pass walked"),
        "cross": translate("hummock", "Cross pass"),
        "link": translate("hummock", "Link"),
    }
    use = _word_of(uses, "attribute($currentfeature, 'use')")
    text = translate("hummock", "{order}: {use} <b>{name}</b><br>{length} m long, {walked} m walked at its end")
    return _lengths(text, length=("length_m", 0), walked=("from_start_m", 0)).format(
        order='[% "order" %]',
        use=f"[% {use} %]",
        name=f"[% coalesce({escaped(_NAME_FIELD)}, '') %]",
    )


def _lengths(text: str, **fields: Tuple[str, int]) -> str:
    """``text`` whose gaps are fields in metres, with so many decimals, told in the units of the site."""
    for name, (field, decimals) in fields.items():
        gap = re.compile(rf"\{{{name}\}}(\s)(m²|m)(?!\w)")
        found = gap.search(text)
        assert found is not None, text
        factor, symbol, _ = units_told().instead_of(found.group(2))
        value = f'"{field}"' if factor == 1 else f'"{field}" * {factor!r}'
        text = gap.sub(f"[% format_number({value}, {decimals}) %]{found.group(1)}{symbol}", text)
    return text


_STATUS, _REASON, _CHECKED, _NAME, _CODE, _LINE = (
    f"attribute($currentfeature, '{name}')" for name in ("status", "reason", "check_reason", "name", "code", "line")
)


def _quoted(text: str) -> str:
    """A text as QGIS's expressions write it."""
    return "'" + text.replace("'", "''") + "'"


def _map(words: Mapping[str, str]) -> str:
    return "map(" + ", ".join(f"{_quoted(word)}, {_quoted(text)}" for word, text in words.items()) + ")"


def _word_of(words: Mapping[str, str], value: str) -> str:
    """An expression for the text of one word; the word itself where it has none."""
    return f"coalesce(map_get({_map(words)}, lower({value})), {escaped(value)}, '')"


def _words_of(words: Mapping[str, str], value: str) -> str:
    """An expression for the texts of words joined by +."""
    element = escaped("@element")
    each = f"coalesce(map_get({_map(words)}, @element), {element})"
    return f"array_to_string(array_foreach(string_to_array(lower(coalesce({value}, '')), '+'), {each}), ', ')"
