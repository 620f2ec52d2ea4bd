"""What the check of a survey found, as QGIS features: findings at their points, and how runs repeat."""

from __future__ import annotations

from math import isfinite
from typing import Optional

import numpy as np
from qgis.core import QgsFeatureSink, QgsFields, QgsGeometry, QgsMultiPoint, QgsPoint

from ..core.points.decisions import words_of_reasons
from ..core.quality.check import SurveyCheck
from ..core.units import heights_to_crs_units, to_crs_units
from .algorithm import say
from .sinks import add_feature, fields_of


def check_fields() -> QgsFields:
    return fields_of(
        (
            ("status", "text"),
            ("reason", "text"),
            ("points", "whole"),
            ("from_line", "whole"),
            ("to_line", "whole"),
            ("size_m", "real"),
            ("over_sigma", "real"),
            ("text", "text"),
        )
    )


def write_check(check: SurveyCheck, sink: QgsFeatureSink) -> None:
    """Put the findings into ``sink``, each as a multipoint of its points."""
    points = check.points
    plan = [to_crs_units(each, points.crs) for each in (points.easting, points.northing)]
    places = np.column_stack([*plan, heights_to_crs_units(points.height, points.crs)])
    for found in check.findings:
        shape = QgsMultiPoint()
        some = places[found.indices]
        for place in some[np.isfinite(some[:, :2]).all(axis=1)].tolist():
            shape.addGeometry(QgsPoint(*place))
        lines = points.source_line[found.indices]
        attributes = [
            found.status.name.lower(),
            words_of_reasons(int(found.reason)),
            len(found.indices),
            int(lines[0]),
            int(lines[-1]),
            *(None if value != value else float(value) for value in (found.size, found.significance)),
            say(found.message),
        ]
        add_feature(sink, QgsGeometry(shape), attributes)


def run_fields() -> QgsFields:
    return fields_of(
        (
            ("run", "whole"),
            ("from_line", "whole"),
            ("to_line", "whole"),
            ("points", "whole"),
            ("places_met", "whole"),
            ("sigma_mm", "real"),
            ("low_mm", "real"),
            ("high_mm", "real"),
            ("claimed_mm", "real"),
            ("claim", "text"),
        )
    )


def write_runs(check: SurveyCheck, sink: QgsFeatureSink) -> None:
    """Put a row for each run into ``sink``: the standard deviation of a height found where it met others, its 95 %
    interval with as many degrees of freedom as places met, and what the receiver claims; millimetres.
    """
    for run in check.runs:
        lines = check.points.source_line[np.flatnonzero(check.run == run.run)]
        sizes = [_millimetres(size) for size in (run.sigma, run.low, run.high, run.claimed)]
        claim = None if None in sizes else "agrees" if run.agrees else "outside"
        row = [run.run, int(lines[0]), int(lines[-1]), len(lines), run.freedom, *sizes, claim]
        add_feature(sink, QgsGeometry(), row)


def _millimetres(metres: float) -> Optional[float]:
    return 1000 * metres if isfinite(metres) else None
