"""The results of a comparison that are numbers."""

from __future__ import annotations

from typing import Dict, List, Tuple

from qgis.PyQt.QtCore import QCoreApplication

from ..core.earthwork.study import Study

translate = QCoreApplication.translate


def volume_numbers() -> List[Tuple[str, str]]:
    """The results that are numbers, by name and label."""
    return [
        ("CUT", translate("hummock", "Cut (m³)")),
        ("CUT_95", translate("hummock", "± of cut, 95 % (m³)")),
        ("FILL", translate("hummock", "Fill (m³)")),
        ("FILL_95", translate("hummock", "± of fill, 95 % (m³)")),
        ("NET", translate("hummock", "Fill less cut (m³)")),
        ("NET_95", translate("hummock", "± of fill less cut, 95 % (m³)")),
        ("CUT_TRIANGLES", translate("hummock", "Cut of the triangles as they are (m³)")),
        ("FILL_TRIANGLES", translate("hummock", "Fill of the triangles as they are (m³)")),
        ("NET_TRIANGLES", translate("hummock", "Fill less cut of the triangles as they are (m³)")),
        ("OFFSET_OFF", translate("hummock", "Height offset that was taken off (m)")),
        ("CUT_AREA", translate("hummock", "Area of cut (m²)")),
        ("FILL_AREA", translate("hummock", "Area of fill (m²)")),
        ("AREA", translate("hummock", "Area compared (m²)")),
        ("MEAN_CUT", translate("hummock", "Mean depth of cut (m)")),
        ("MEAN_FILL", translate("hummock", "Mean depth of fill (m)")),
        ("FIRST_ONLY", translate("hummock", "Not compared: existing surface only (m²)")),
        ("SECOND_ONLY", translate("hummock", "Not compared: design only (m²)")),
    ]


def offset_off(study: Study) -> float:
    """Metres taken off the heights of the second surface."""
    if study.comparison.design_tin is None:
        return 0.0
    if study.settling is not None:
        return study.settling.unchanged.offset
    return study.options.offset or 0.0


def study_numbers(study: Study) -> Dict[str, float]:
    volume, doubt = study.volume, study.doubt
    return {
        "CUT": doubt.cut.value,
        "CUT_95": doubt.cut.half_95,
        "FILL": doubt.fill.value,
        "FILL_95": doubt.fill.half_95,
        "NET": doubt.net.value,
        "NET_95": doubt.net.half_95,
        "CUT_TRIANGLES": study.measured.cut,
        "FILL_TRIANGLES": study.measured.fill,
        "NET_TRIANGLES": study.measured.net,
        "OFFSET_OFF": offset_off(study),
        "CUT_AREA": volume.cut_area,
        "FILL_AREA": volume.fill_area,
        "AREA": volume.common_area,
        "MEAN_CUT": doubt.cut.value / volume.cut_area if volume.cut_area > 0 else 0.0,
        "MEAN_FILL": doubt.fill.value / volume.fill_area if volume.fill_area > 0 else 0.0,
        "FIRST_ONLY": volume.existing_only,
        "SECOND_ONLY": volume.design_only,
    }
