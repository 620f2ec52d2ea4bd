"""Hummock: from the points a GNSS rover stores by itself to surface, contours and files to hand over."""


def classFactory(iface):
    """Called by QGIS: the plugin object. ``iface`` is None in qgis_process."""
    from .hummock import HummockPlugin  # only here: the core runs without QGIS

    return HummockPlugin(iface)
