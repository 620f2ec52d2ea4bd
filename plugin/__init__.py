"""Hummock: from the points a GNSS rover stores by itself to surface, contours and files to hand over."""

from typing import Any


def classFactory(iface: Any) -> Any:
    """Called by QGIS: the plugin object. ``iface`` is None in qgis_process."""
    from .hummock import HummockPlugin  # only here: the core runs without QGIS

    return HummockPlugin(iface)
