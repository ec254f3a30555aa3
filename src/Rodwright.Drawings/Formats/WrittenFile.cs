namespace Rodwright.Drawings.Formats;

/// <summary>A file as bytes, not yet on any disk.</summary>
/// <param name="Name">File name with its extension, without folder.</param>
/// <param name="MediaType">As sent over a network.</param>
/// <param name="Bytes">The content.</param>
public sealed record WrittenFile(string Name, string MediaType, ReadOnlyMemory<byte> Bytes);
