#:property RunAnalyzers=false
using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Xml.Linq;

// Run while packing: dotnet run --file PublicDocs.cs bin/Release/net8.0/BoxHeights …
// The compiler writes what is said of internal members into the file of documentation too, which nobody can use: a third of it.
foreach (string path in args)
{
    HashSet<string> visible = Visible(path + ".dll");
    XDocument docs = XDocument.Load(path + ".xml");
    docs.Descendants("member").Where(member => !visible.Contains(Bare((string)member.Attribute("name")!))).Remove();
    docs.Save(path + ".xml");
}

static HashSet<string> Visible(string path)
{
    HashSet<string> visible = new(StringComparer.Ordinal);
    using (PEReader assembly = new(File.OpenRead(path)))
    {
        MetadataReader metadata = assembly.GetMetadataReader();
        foreach (TypeDefinitionHandle handle in metadata.TypeDefinitions)
        {
            TypeDefinition type = metadata.GetTypeDefinition(handle);
            if (!IsVisible(metadata, type))
            {
                continue;
            }

            string name = NameOf(metadata, type);
            visible.Add(name);
            visible.UnionWith(type.GetMethods().Select(metadata.GetMethodDefinition)
                .Where(method => Reaches((int)(method.Attributes & MethodAttributes.MemberAccessMask)))
                .Select(method => metadata.GetString(method.Name).Replace('.', '#'))
                .SelectMany(method => new[] { method, method.StartsWith("get_", StringComparison.Ordinal) ? method["get_".Length..] : method })
                .Concat(type.GetFields().Select(metadata.GetFieldDefinition).Where(field => Reaches((int)(field.Attributes & FieldAttributes.FieldAccessMask))).Select(field => metadata.GetString(field.Name)))
                .Select(member => name + "." + member));
        }
    }

    return visible;
}

// "M:BoxHeights.Items`1.Select``1(System.Func{`0,``0})" is known by "BoxHeights.Items`1.Select".
static string Bare(string id)
{
    string name = id[2..].Split('(')[0].Split('~')[0];
    int generic = name.IndexOf("``", StringComparison.Ordinal);
    return generic < 0 ? name : name.Remove(generic);
}

static string NameOf(MetadataReader metadata, TypeDefinition type) => type.GetDeclaringType() is { IsNil: false } outer
    ? NameOf(metadata, metadata.GetTypeDefinition(outer)) + "." + metadata.GetString(type.Name)
    : metadata.GetString(type.Namespace) + "." + metadata.GetString(type.Name);

static bool IsVisible(MetadataReader metadata, TypeDefinition type) => (type.Attributes & TypeAttributes.VisibilityMask) switch
{
    TypeAttributes.Public => true,
    TypeAttributes.NestedPublic or TypeAttributes.NestedFamily or TypeAttributes.NestedFamORAssem => IsVisible(metadata, metadata.GetTypeDefinition(type.GetDeclaringType())),
    _ => false,
};

// Public, protected, or protected and internal: the same numbers for methods and fields.
static bool Reaches(int access) => (MethodAttributes)access is MethodAttributes.Public or MethodAttributes.Family or MethodAttributes.FamORAssem;
