"""How outputs about water look.

QML files in ``styles/``, saved from QGIS's own classes. Colours: ColorBrewer's Blues for depth and slope, Set2 for
catchments, which are labelled too, PuOr for more and less water, YlOrBr for flat ground, the brown of BrBG for ridges.
"""

from __future__ import annotations

from typing import Dict

from qgis.core import QgsProcessingContext, QgsVectorLayer
from qgis.PyQt.QtCore import QCoreApplication

from ..core.messages import QT_TRANSLATE_NOOP
from .styles import apply_qml, dress_layer

translate = QCoreApplication.translate

FLOW_PATHS = "flow_paths.qml"
PATH_STARTS = "path_starts.qml"
FLOW_ARROWS = "flow_arrows.qml"
PONDS = "ponds.qml"
POND_POINTS = "pond_points.qml"
SPILLS = "spills.qml"
CATCHMENTS = "catchments.qml"
CHANNELS = "channels.qml"
RIDGES = "ridges.qml"
FLAT_AREAS = "flat_areas.qml"
PEAK_FLOWS = "peak_flows.qml"
CHANGED_PONDS = "changed_ponds.qml"
MOVED_GROUND = "moved_ground.qml"
CHANGED_PATHS = "changed_paths.qml"

#: The legend texts of these QML files, which QGIS itself does not translate.
LEGEND_TEXTS = (
    QT_TRANSLATE_NOOP("hummock", "To the rim"),
    QT_TRANSLATE_NOOP("hummock", "To an inlet"),
    QT_TRANSLATE_NOOP("hummock", "To a pond"),
    QT_TRANSLATE_NOOP("hummock", "To a pit"),
    QT_TRANSLATE_NOOP("hummock", "Undecided"),
    QT_TRANSLATE_NOOP("hummock", "Off the surface"),
    QT_TRANSLATE_NOOP("hummock", "Pit"),
    QT_TRANSLATE_NOOP("hummock", "Spill point"),
    QT_TRANSLATE_NOOP("hummock", "Catchment"),
    QT_TRANSLATE_NOOP("hummock", "Drains nowhere until full"),
    QT_TRANSLATE_NOOP("hummock", "New pond"),
    QT_TRANSLATE_NOOP("hummock", "Deeper"),
    QT_TRANSLATE_NOOP("hummock", "Unchanged"),
    QT_TRANSLATE_NOOP("hummock", "Shallower"),
    QT_TRANSLATE_NOOP("hummock", "Gone"),
    QT_TRANSLATE_NOOP("hummock", "Path before"),
    QT_TRANSLATE_NOOP("hummock", "Path after"),
)


def dress_water(context: QgsProcessingContext, destination: str, qml: str) -> None:
    """Style the output ``destination`` by ``qml``, its columns named with their units, if QGIS is going to load it."""

    def dress(layer: QgsVectorLayer) -> None:
        apply_qml(layer, qml)
        for name, label in column_labels().items():
            index = layer.fields().indexOf(name)
            if index >= 0:
                layer.setFieldAlias(index, label)

    dress_layer(context, destination, dress)


def column_labels() -> Dict[str, str]:
    """What columns are called, with their units."""
    return {
        "feature": translate("hummock", "Feature of the start"),
        "end": translate("hummock", "Ends at"),
        "ends_in": translate("hummock", "Ends in"),
        "length_m": translate("hummock", "Length in plan (m)"),
        "drop_m": translate("hummock", "Drop (m)"),
        "slope_pct": translate("hummock", "Slope (%)"),
        "direction": translate("hummock", "Direction (degrees from grid north)"),
        "pond": translate("hummock", "Pond"),
        "parent": translate("hummock", "Part of pond"),
        "depth_m": translate("hummock", "Depth (m)"),
        "sigma_m": translate("hummock", "Standard deviation of the depth (m)"),
        "chance_pct": translate("hummock", "Chance of noise (%)"),
        "area_m2": translate("hummock", "Area (m²)"),
        "volume_m3": translate("hummock", "Volume (m³)"),
        "level": translate("hummock", "Level (unit of the CRS)"),
        "height": translate("hummock", "Height (unit of the CRS)"),
        "points": translate("hummock", "Points under water"),
        "spills_to": translate("hummock", "Spills to"),
        "drains_to": translate("hummock", "Drains to"),
        "share_pct": translate("hummock", "Share of the surface (%)"),
        "nowhere_m2": translate("hummock", "Drains nowhere until ponds are full (m²)"),
        "nowhere_pct": translate("hummock", "Drains nowhere until ponds are full (%)"),
        "limit_pct": translate("hummock", "Limit (%)"),
        "runoff": translate("hummock", "Runoff coefficient"),
        "from_what": translate("hummock", "Drained to"),
        "to_what": translate("hummock", "Drains now to"),
        "change": translate("hummock", "Change"),
        "before": translate("hummock", "Pond before"),
        "after": translate("hummock", "Pond after"),
        "when": translate("hummock", "Before or after"),
    }
