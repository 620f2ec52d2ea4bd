"""Map tips: what QGIS shows of a feature under the mouse (View > Show Map Tips)."""

from __future__ import annotations

from typing import Mapping

from qgis.PyQt.QtCore import QCoreApplication

from ..core.messages import QT_TRANSLATE_NOOP
from ..core.report.remarks import REASONS

translate = QCoreApplication.translate

STATUSES = {
    "used": QT_TRANSLATE_NOOP("hummock", "Used"),
    "flagged": QT_TRANSLATE_NOOP("hummock", "Flagged (used)"),
    "rejected": QT_TRANSLATE_NOOP("hummock", "Rejected (not in the surface)"),
}


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
        f"trim(concat({_NAME}, ' ', {_CODE}))",
        f"concat({_quoted(translate('hummock', 'Line of the file'))}, ' ', {_LINE})",
    ]
    return f"[% array_to_string(array_filter(array({', '.join(lines)}), @element <> ''), '<br>') %]"


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
    return f"coalesce(map_get({_map(words)}, lower({value})), {value}, '')"


def _words_of(words: Mapping[str, str], value: str) -> str:
    """An expression for the texts of words joined by +."""
    each = f"coalesce(map_get({_map(words)}, @element), @element)"
    return f"array_to_string(array_foreach(string_to_array(lower(coalesce({value}, '')), '+'), {each}), ', ')"
