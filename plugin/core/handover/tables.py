"""Findings of a surface as a CSV table."""

from __future__ import annotations

from typing import Any, Callable, Optional, Sequence

from ..files import PathLike, TableWriter, replace_file
from ..surface.findings import Finding
from ..units import site_units, to_crs_units


def write_findings(
    findings: Sequence[Finding], crs: Optional[Any], path: PathLike, translate: Callable[[str], str] = str
) -> None:
    """Write easting and northing in the unit of ``crs``, kind, value in its unit, and the text of each finding.

    ``kind`` is a word for programs (see :class:`..surface.findings.FindingKind`), ``text`` a sentence for people.
    Raises SurveyError when the file cannot be written.
    """
    with replace_file(path) as temporary, open(temporary, "w", encoding="utf-8", newline="") as stream:
        units = site_units(crs)
        writer = TableWriter(stream)
        writer.writerow(["easting", "northing", "kind", "value", "unit", "text"])
        for finding in findings:
            easting, northing = (round(float(to_crs_units(v, crs)), 4) for v in (finding.easting, finding.northing))
            text = finding.message.say(translate, units=units)
            value, unit = units.told(finding.value, finding.unit)
            writer.writerow([easting, northing, finding.kind.value, round(value, 4), unit, text])
