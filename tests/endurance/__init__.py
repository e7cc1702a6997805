"""The store and its way in under hard use: kills, failing disks, hostile files, no network.

``python -m tests.endurance --full`` runs everything; pytest runs a short form.
"""
