### Devices and their keys: who wrote what, whom to trust, what a file brings. Refusals as in errors.ftl.

## Refusals.
error-key-unreadable = This device's own key cannot be read
error-key-unreadable-help = It is needed to sign what is recorded. Set this data folder aside, and restore its latest backup into a new one.
error-handover-before-signatures = The handover file was made before entries were signed
error-handover-before-signatures-help = Update Steady on the device that it comes from, and have the file made anew there. Nothing was taken in.
error-handover-unproven = An entry in the handover file is not proven to be its writer's
error-handover-unproven-help = Do not trust this copy. Have the file made anew on the device that wrote the visit. Nothing of it was taken in.
error-handover-unsigned = The handover file holds entries from before there were signatures
error-handover-unsigned-help = Nobody can prove who wrote them, so they come in only from a backup of your own. Nothing of the visit was taken in.
error-handover-own-name = The handover file holds entries in this device's own name that it does not hold
error-handover-own-name-help = This device brings itself nothing. If its data folder was copied or put back to an earlier day, restore its latest backup; if not, do not trust the file. Nothing of the visit was taken in.
