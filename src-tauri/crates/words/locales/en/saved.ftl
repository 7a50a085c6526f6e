## Files that were saved: their names, and where they lie. $place is one of the messages that begin with place-

saved-file = Saved as { $name } { $place }.
# $names: a list.
saved-files = Saved { $place }: { $names }.
# A folder with many files.
saved-folder = Saved { $place }.
# A file that is kept, as part of a sentence.
saved-name-and-place = { $name } { $place }
# A button: opens the program that shows files, at this file.
saved-show = Show in folder
saved-not-shown = No program for files could be opened. The file is here:
saved-gone = The file is not there any more. It was moved, renamed or removed.

# $folder: a folder's name, or names from outside to inside.
place-documents = in your Documents folder
place-documents-within = in the folder { $folder } in Documents
place-downloads = in your Downloads folder
place-downloads-within = in the folder { $folder } in Downloads
place-desktop = on the desktop
place-desktop-within = in the folder { $folder } on the desktop
place-home = in your home folder
place-home-within = in the folder { $folder } in your home folder
place-data = in the data folder of Carryover
place-data-within = in the folder { $folder } in the data folder of Carryover
place-other = in the folder { $folder }
# Between names of folders, from outside to inside.
place-inner = { $outer } / { $inner }
