"""How the field writes codes, as parameters of the algorithms that read them."""

from __future__ import annotations

from typing import Any, Dict

from qgis.core import QgsProcessingContext, QgsProcessingParameterField, QgsProcessingParameterString
from qgis.PyQt.QtCore import QCoreApplication

from ..core.linework.convention import DEFAULT_CONVENTION, FieldConvention, four_words
from .algorithm import HummockAlgorithm
from .parameters import number
from .versions import ANY_FIELD

translate = QCoreApplication.translate

_WORDS = ",".join((DEFAULT_CONVENTION.begin, DEFAULT_CONVENTION.end, DEFAULT_CONVENTION.close, DEFAULT_CONVENTION.arc))


def add_convention_parameters(algorithm: HummockAlgorithm, layer: str = "INPUT", arcs: bool = True) -> None:
    """Adds the parameters that :func:`read_convention` reads, all advanced.

    ``layer``: the parameter whose fields may hold line numbers and words, "" where they are columns of a file.
    ``arcs``: whether lines are drawn, so that the tolerance of arcs matters.
    """
    for name, label, default, help_text in (
        (
            "CODE_WORDS",
            translate("hummock", "Words for begin, end, close and arc"),
            _WORDS,
            translate(
                "hummock",
                "What the surveyor types beside a code where a line begins, ends, closes, or runs in an arc through "
                "the point. Commas between them; leave one empty where the field has no word.",
            ),
        ),
        (
            "CODE_SEPARATOR",
            translate("hummock", "Between several codes on one point"),
            DEFAULT_CONVENTION.separator,
            translate("hummock", "Empty where a point never has several codes."),
        ),
        (
            "CODE_PATTERN",
            translate("hummock", "Pattern of a code (regular expression; empty: code, line number, words)"),
            "",
            translate(
                "hummock",
                "With the groups (?P<code>…) and, if there are any, (?P<line>…) and (?P<words>…), for codes that are "
                "written in another way.",
            ),
        ),
    ):
        algorithm.add(QgsProcessingParameterString(name, label, default, optional=True), help_text, advanced=True)
    for name, label in (
        ("LINE_NUMBER_FIELD", translate("hummock", "Field of the line number (empty: it stands in the code)")),
        ("WORD_FIELD", translate("hummock", "Field of the words (empty: they stand in the code)")),
    ):
        chosen = (
            QgsProcessingParameterField(name, label, parentLayerParameterName=layer, type=ANY_FIELD, optional=True)
            if layer
            else QgsProcessingParameterString(name, label, optional=True)
        )
        algorithm.add(chosen, translate("hummock", "For surveys that keep it in a column of its own."), advanced=True)
    if not arcs:
        return
    algorithm.add(
        number("ARC_TOLERANCE", translate("hummock", "Tolerance of arcs (m)"), DEFAULT_CONVENTION.arc_tolerance, 1e-4),
        translate("hummock", "How far an arc may stand off the chords that replace it."),
        advanced=True,
    )


def read_convention(
    algorithm: HummockAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext
) -> FieldConvention:
    """The convention the parameters say. Raises SurveyError when it cannot work."""

    def text(name: str) -> str:
        return str(algorithm.parameterAsString(parameters, name, context)).strip()

    tolerance = DEFAULT_CONVENTION.arc_tolerance
    if algorithm.parameterDefinition("ARC_TOLERANCE") is not None:
        tolerance = algorithm.parameterAsDouble(parameters, "ARC_TOLERANCE", context)
    return FieldConvention(
        **four_words(text("CODE_WORDS") or ",,,"),
        separator=text("CODE_SEPARATOR"),
        pattern=text("CODE_PATTERN") or None,
        line_column=text("LINE_NUMBER_FIELD") or None,
        word_column=text("WORD_FIELD") or None,
        arc_tolerance=tolerance,
    )
